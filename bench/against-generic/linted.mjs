// What the linter found, in the words of the others: node linted.mjs RESULT FOLDER
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { basename, join } from "node:path";

const yaml = createRequire(import.meta.url)("js-yaml");
const [result, folder] = process.argv.slice(2);
const sheets = new Map();
const sheet = (name) => {
  if (!sheets.has(name)) sheets.set(name, yaml.load(readFileSync(join(folder, name), "utf8")));
  return sheets.get(name);
};

const lines = new Set();
const broken = new Set();
const found = JSON.parse(readFileSync(result, "utf8"));
for (const { code, path, message, source } of found.filter((one) => one.code === "schema")) {
  const name = basename(source);
  const key = /required property "?'?(\w+)/.exec(message);
  const where = ["", ...path.slice(0, 3), ...(key ? [key[1]] : path.slice(3))].join("/");
  broken.add(`${name} ${path.slice(0, 3).join("/")}`);
  lines.add(`${name} ${code} ${where}`);
}
// A subject that breaks the schema is not judged.
for (const { code, path, source } of found.filter((one) => one.code !== "schema")) {
  const name = basename(source);
  const [, type, number] = path;
  if (!broken.has(`${name} ${path.slice(0, 3).join("/")}`)) {
    lines.add(`${name} ${code} ${sheet(name).facts[type][number].subject}`);
  }
}
console.log([...lines].join("\n"));
