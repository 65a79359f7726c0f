// Writes the checks as a ruleset of Spectral: node ruleset.mjs SCHEMA > ruleset.json
import { readFileSync } from "node:fs";
import { rules, spectralRule } from "./rules.mjs";

const schema = JSON.parse(readFileSync(process.argv[2], "utf8"));
const all = Object.fromEntries(rules.map((rule) => [rule.id, spectralRule(rule)]));
all.schema = {
  message: "{{error}}",
  severity: "error",
  given: "$",
  then: { function: "schema", functionOptions: { schema, allErrors: true } },
};
console.log(JSON.stringify({ rules: all }, null, 1));
