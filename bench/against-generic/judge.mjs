// Judges fact sheets with json-rules-engine and ajv: node judge.mjs SCHEMA FOLDER VERDICTS ROUNDS
import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { engineRule, rules } from "./rules.mjs";

const require = createRequire(import.meta.url);
const { Engine } = require("json-rules-engine");
const Ajv = require("ajv");
const yaml = require("js-yaml");

const [schema, folder, verdicts, rounds] = process.argv.slice(2);
const validate = new Ajv({ allErrors: true }).compile(JSON.parse(readFileSync(schema, "utf8")));
const names = readdirSync(folder).filter((name) => name.endsWith(".yaml")).sort();
const texts = names.map((name) => readFileSync(join(folder, name), "utf8"));

// One engine a fact type: no engine is asked about facts that none of its rules is for.
const engines = new Map();
for (const rule of rules) {
  if (!engines.has(rule.type)) engines.set(rule.type, new Engine([]));
  engines.get(rule.type).addRule(engineRule(rule));
}

// Where a sheet breaks the schema, as /facts/TYPE/NUMBER/KEY.
function faults(sheet) {
  if (validate(sheet)) return [];
  return validate.errors.map((error) =>
    error.keyword === "required" ? `${error.instancePath}/${error.params.missingProperty}` : error.instancePath);
}

async function judge(sheet, broken) {
  const found = [];
  for (const [type, engine] of engines) {
    const facts = sheet.facts[type] ?? [];
    for (let i = 0; i < facts.length; i++) {
      if (broken.size > 0 && broken.has(`/facts/${type}/${i}`)) continue;
      const { events } = await engine.run(facts[i]);
      for (const event of events) found.push(`${event.type} ${facts[i].subject}`);
    }
  }
  return found;
}

const owner = (path) => path.split("/").slice(0, 4).join("/");

async function whole(text) {
  const sheet = yaml.load(text);
  const wrong = faults(sheet);
  return [wrong, await judge(sheet, new Set(wrong.map(owner)))];
}

const lines = [];
for (let i = 0; i < names.length; i++) {
  const [wrong, found] = await whole(texts[i]);
  lines.push(...wrong.map((path) => `${names[i]} schema ${path}`), ...found.map((one) => `${names[i]} ${one}`));
}
writeFileSync(verdicts, lines.sort().join("\n") + "\n");

const parsed = texts.map((text) => {
  const sheet = yaml.load(text);
  return [sheet, new Set(faults(sheet).map(owner))];
});
async function judgeAll() {
  for (const [sheet, broken] of parsed) await judge(sheet, broken);
}
async function wholeAll() {
  for (const text of texts) await whole(text);
}
async function parseAll() {
  for (const text of texts) yaml.load(text);
}

// Processor time of a round of the whole process, which other work on the machine changes less than the clock.
for (const [name, work] of [["judge", judgeAll], ["whole", wholeAll], ["parse", parseAll]]) {
  for (let i = 0; i < rounds; i++) await work(); // warms up
  const start = process.cpuUsage();
  for (let i = 0; i < rounds; i++) await work();
  const { user, system } = process.cpuUsage(start);
  console.log(`${name} ${((user + system) / 1e3 / rounds).toFixed(3)}`);
}
