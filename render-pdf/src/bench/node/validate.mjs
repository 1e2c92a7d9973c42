// Puts each drill of a school to the schema: node validate.mjs SCHEMA SCHOOL [once]. Without "once" a pass for each line of
// input, answered by nanoseconds of the clock, of the processor, and how many drills fit.
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import Ajv2020 from 'ajv/dist/2020.js';
import { parse } from 'yaml';

const [schema, school, once] = process.argv.slice(2);
const validate = new Ajv2020({ allErrors: true, strict: false }).compile(JSON.parse(readFileSync(schema, 'utf8')));

function drills(folder) {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return drills(path);
    return entry.name.endsWith('.yaml') && entry.name !== 'school.yaml' ? [path] : [];
  });
}

function fitting() {
  return drills(school).filter((file) => validate(parse(readFileSync(file, 'utf8')))).length;
}

if (once === 'once') {
  console.log(fitting());
} else {
  console.log('ready');
  for await (const line of createInterface({ input: process.stdin })) {
    const processor = process.cpuUsage();
    const clock = process.hrtime.bigint();
    const count = fitting();
    const took = process.hrtime.bigint() - clock;
    const used = process.cpuUsage(processor);
    console.log(`${took} ${(used.user + used.system) * 1000} ${count}`);
  }
}
