// The recap list of each demonstration machine as comma-separated values: read back by SQLite's own import it is unchanged,
// and its counts are the positions on the boards.
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const build = process.env.BENCHLORE_BUILD ?? "build";
let passed = 0, failed = 0;
const check = (good, text) => {
  if (good) passed += 1;
  else {
    failed += 1;
    console.log(`not ok: ${text}`);
  }
};

// Positions with a component on the boards that a machine names, counted in the notes themselves.
const front = (path) => readFileSync(path, "utf8").split(/^---$/m)[1] ?? "";
const positionsOn = (board) => {
  const text = front(`content/boards/${board}.md`);
  const block = /^positions:\n((?: .*\n|\n)*)/m.exec(text);
  return block ? (block[1].match(/^ {4}component: /gm) ?? []).length + (block[1].match(/^ {2}\S+: \{.*component: /gm) ?? []).length : 0;
};
const boardsOf = (machine) => {
  const list = /^boards: \[(.*)\]/m.exec(front(`content/equipment/${machine}.md`));
  return list ? list[1].split(",").map((name) => name.trim()) : [];
};

const folder = mkdtempSync(join(tmpdir(), "benchlore-parts-"));
let machines = 0;
for (const file of readdirSync("content/equipment")) {
  const machine = file.replace(/\.md$/, "");
  const expected = boardsOf(machine).reduce((sum, board) => sum + positionsOn(board), 0);
  if (expected === 0) continue;
  machines += 1;
  const csv = execFileSync(`${build}/benchlore`, ["parts-list", machine, "--content", "content", "--format", "csv"], { encoding: "utf8" });
  const path = join(folder, `${machine}.csv`);
  writeFileSync(path, csv);
  const sql = (command) => execFileSync("sqlite3", [":memory:", "-cmd", ".mode csv", "-cmd", `.import --csv ${path} parts`, command], { encoding: "utf8" });
  const again = csv.split("\r\n", 1)[0] + "\r\n" + sql("select * from parts;");
  const plain = (text) => text.replace(/\r\n/g, "\n").replace(/"([^",\n]*)"/g, "$1");
  check(plain(again) === plain(csv), `${machine}: the list changes when SQLite reads it`);
  check(Number(sql('select sum("count") from parts;')) === expected, `${machine}: ${sql('select sum("count") from parts;').trim()} counted, ${expected} positions`);
  check(Number(sql('select count(*) from parts where cast("to order" as integer) < 0;')) === 0, `${machine}: a negative order`);
}
check(machines >= 3, `only ${machines} machines`);
rmSync(folder, { recursive: true });
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed > 0 ? 1 : 0);
