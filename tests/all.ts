// `npm test`: every check of the house, then every test. Says little while all is well, prints what failed whole, and
// ends with one line, `N passed, N failed`, that counts each check and each test as one.
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';

interface Check {
  readonly name: string;
  readonly command: string;
  /** What the output must hold, lest a tool that looked at nothing count as content. */
  readonly shows?: RegExp;
}

const root = join(import.meta.dirname, '..');
const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { scripts: Record<string, string> };

const generated = Object.entries(scripts).filter(([name]) => name.startsWith('generate:'));

const checks: readonly Check[] = [
  { name: 'format and lint', command: 'biome ci --colors=off --error-on-warnings .', shows: /Checked \d{2,} files/ },
  { name: 'types', command: 'tsc' },
  { name: 'dead code', command: 'knip --treat-config-hints-as-errors' },
  ...generated.map(([name, command]) => ({ name: `${name} in step`, command: `${command} --check` })),
  { name: 'bundle', command: 'node deploy/build.mjs' },
];

const env = {
  ...process.env,
  PATH: [join(root, 'node_modules/.bin'), process.env['PATH']].join(delimiter),
  NO_COLOR: '1',
};

const run = (command: string): Promise<{ readonly ok: boolean; readonly output: string }> =>
  new Promise((resolve) => {
    const child = spawn(command, { cwd: root, env, shell: true, stdio: ['ignore', 'pipe', 'pipe'] });
    let output = '';
    for (const stream of [child.stdout, child.stderr]) {
      stream.setEncoding('utf8').on('data', (text: string) => {
        output += text;
      });
    }
    child.on('error', (error) => resolve({ ok: false, output: `${error}` }));
    child.on('close', (code) => resolve({ ok: code === 0, output }));
  });

let passed = 0;
let failed = 0;
const say = (ok: boolean, name: string, since: number) =>
  console.log(`${ok ? '✓' : '✗'} ${name} (${((performance.now() - since) / 1000).toFixed(1)} s)`);

async function check({ name, command, shows }: Check): Promise<void> {
  const since = performance.now();
  const { ok: exited, output } = await run(command);
  const ok = exited && (shows?.test(output) ?? true);
  say(ok, name, since);
  if (ok) passed += 1;
  else {
    failed += 1;
    console.log(`$ ${command}\n${output}${exited ? `\n${name}: saw nothing to check\n` : ''}`);
  }
}

/** Two at a time: the house is built on machines of two cores. */
async function checkAll(): Promise<void> {
  const waiting = checks.values();
  const worker = async () => {
    for (const next of waiting) await check(next);
  };
  await Promise.all([worker(), worker()]);
}

interface Report {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
}

async function test(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'lyeward-'));
  const file = join(folder, 'report.json');
  const since = performance.now();
  const { ok, output } = await run(`vitest run --reporter=default --reporter=json --outputFile.json="${file}"`);
  let report: Report = { numPassedTests: 0, numFailedTests: 0 };
  try {
    report = JSON.parse(readFileSync(file, 'utf8')) as Report;
  } catch {
    // No report: the runner broke down; its output says why, and the count below is a failure.
  }
  rmSync(folder, { recursive: true });
  const good = ok && report.numFailedTests === 0 && report.numPassedTests > 0;
  say(good, `${report.numPassedTests} tests`, since);
  if (!good) console.log(output);
  passed += report.numPassedTests;
  // A file that does not even load holds no test that could fail, and so is counted here.
  failed += good ? 0 : Math.max(1, report.numFailedTests);
}

await checkAll();
await test();
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
