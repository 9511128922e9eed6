#!/usr/bin/env node
/**
 * The command: arguments, streams and exit codes; one short function a command.
 *
 * Exit 0 done, 1 problems in the files (or reports that no longer match), 2 wrong call. Results go
 * to stdout or files, messages to stderr.
 */
import { mkdirSync, readdirSync, readFileSync, renameSync, statSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { Command } from 'commander';
import { printable } from './notebook/problem.ts';

interface Evaluated {
  readonly file: string;
  readonly text: string;
}

const fallbackFolder = 'scenarios';
const program = new Command('torqueleaf')
  .description(
    'Rank training programs by how well their gains land at the joint angles that count.',
  )
  .exitOverride()
  .configureOutput({ writeErr: (text) => process.stderr.write(text) });

program
  .command('report')
  .description('evaluate scenarios, print the ranking and write a markdown report of each')
  .argument('[files...]', `scenario files; every .yaml file of ${fallbackFolder}/ when left out`)
  .option('--out <folder>', 'where the reports go', 'reports')
  .option('--full', 'print the whole report, not only the ranking')
  .option('--json', 'print results as data and write no report')
  .action((files: string[], options: { out: string; full?: true; json?: true }) =>
    report(files, options),
  );

program
  .command('check')
  .description('say everything that is wrong with scenarios, and whether their reports still match')
  .argument('[files...]', `scenario files; every .yaml file of ${fallbackFolder}/ when left out`)
  .option('--out <folder>', 'where the reports are', 'reports')
  .action((files: string[], options: { out: string }) => check(files, options));

program
  .command('lifts')
  .description('list the lifts, or draw one and say what is assumed of it')
  .argument('[name]', 'a lift, in quotes if its name has a space')
  .option('--file <scenario>', 'also the lifts that this scenario declares')
  .action((name: string | undefined, options: { file?: string }) => showLifts(name, options.file));

program
  .command('ask')
  .description('answer a formula about a scenario, or list what formulas may name and call')
  .argument('<file>', 'a scenario file')
  .argument('[formula]', 'for example: best("back squat", 110 deg) / mass')
  .action((file: string, formula: string | undefined) => answer(file, formula));

program
  .command('sweep')
  .description('put several values at one place of a scenario and answer formulas with each')
  .argument('<file>', 'a scenario file; it is not changed')
  .argument('<place>', 'for example "athlete.mass" or "programs.deep squat.work.1.to"')
  .argument('<values>', 'from : step : to, such as "80 deg : 10 deg : 120 deg", or a list')
  .argument('<formulas...>', 'for example "target_gain(\\"deep squat\\")"')
  .action((file: string, place: string, values: string, formulas: string[]) =>
    vary(file, place, values, formulas),
  );

program
  .command('seek')
  .description('find the value of one place at which a formula meets a goal')
  .argument('<file>', 'a scenario file; it is not changed')
  .argument('<place>', 'for example "programs.deep squat.work.1.load"')
  .argument('<range>', 'where to look, such as "50 kg : 80 kg"')
  .argument('<formula>', 'for example "target_gain(\\"deep squat\\")"')
  .argument('<goal>', 'what it should be, such as 0.03 or "80 kg"')
  .action((file: string, place: string, range: string, formula: string, goal: string) =>
    find(file, place, range, formula, goal),
  );

program
  .command('start')
  .description('write a new scenario with comments, to be filled in')
  .argument('[file]', 'where to write it', 'scenario.yaml')
  .action((file: string) => start(file));

program
  .command('schema')
  .description('print the JSON Schema of a scenario, for editors')
  .action(() => printSchema());

/** Evaluates each file; a file with problems gets no report, and the exit code says so. */
async function report(
  files: readonly string[],
  options: { out: string; full?: true; json?: true },
): Promise<void> {
  const page = await loadPage();
  const data: object[] = [];
  for (const scenario of read(files)) {
    const results = await evaluate(scenario);
    if (!results) continue;
    if (options.json) {
      data.push(page.resultsJson(results));
      continue;
    }
    const whole = page.fullReport(results);
    const path = join(options.out, reportName(scenario.file));
    const shown = options.full ? whole : { ...whole, sections: whole.sections.slice(0, 1) };
    process.stdout.write(`${page.renderTerminal(shown, width())}\n`);
    if (writeWhole(options.out, path, page.renderMarkdown(whole)))
      process.stderr.write(`report: ${path}\n`);
  }
  if (data.length > 0) process.stdout.write(`${page.jsonText(data)}\n`);
}

/** Reports every problem, and reports that differ from what the files would give now. */
async function check(files: readonly string[], options: { out: string }): Promise<void> {
  const page = await loadPage();
  for (const scenario of read(files)) {
    const results = await evaluate(scenario, Number.POSITIVE_INFINITY);
    if (!results) continue;
    const path = join(options.out, reportName(scenario.file));
    const now = page.renderMarkdown(page.fullReport(results));
    const written = readIfThere(path);
    if (written === now) process.stdout.write(`${scenario.file}: fine, report matches\n`);
    else {
      process.exitCode = 1;
      const state = written === undefined ? 'has no report yet' : 'the report differs';
      const out = options.out === 'reports' ? '' : ` --out ${options.out}`;
      process.stdout.write(
        `${scenario.file}: the scenario is fine; ${state} (${path}); run: torqueleaf report ${scenario.file}${out}\n`,
      );
    }
  }
}

/** Prints the value of a formula, or the names and functions that formulas have. */
async function answer(file: string, formula?: string): Promise<void> {
  const [scenario] = read([file]);
  const results = scenario && (await evaluate(scenario));
  if (!results) return;
  const { ask, vocabulary } = await import('./run.ts');
  if (formula === undefined) {
    const [{ vocabularyPage }, { renderTerminal }] = await Promise.all([
      import('./page/vocabularyPage.ts'),
      import('./page/terminal.ts'),
    ]);
    process.stdout.write(`${renderTerminal(vocabularyPage(await vocabulary(results)), width())}\n`);
    return;
  }
  const found = await ask(results, formula);
  if ('fault' in found) {
    const { message, hint } = found.fault;
    refuse(`the formula ${message}${hint === undefined ? '' : `\n  hint: ${hint}`}`);
    return;
  }
  const { cellText } = await import('./notebook/formula/cellText.ts');
  process.stdout.write(`${printableLines(cellText(found.result))}\n`);
}

/** Prints a table of what formulas come to with several values at one place. */
async function vary(
  file: string,
  place: string,
  values: string,
  formulas: readonly string[],
): Promise<void> {
  const [scenario] = read([file]);
  if (!scenario) return;
  const [{ sweep }, { sweepPage }, { renderTerminal }] = await Promise.all([
    import('./sweep.ts'),
    import('./page/sweepPage.ts'),
    import('./page/terminal.ts'),
  ]);
  const swept = await sweep(scenario.file, scenario.text, place, values, formulas);
  if (swept.fault !== undefined) refuse(swept.fault);
  else process.stdout.write(`${renderTerminal(sweepPage(swept.sweep), width())}\n`);
}

/** Prints where a formula meets a goal; exits 1 if nowhere. */
async function find(
  file: string,
  place: string,
  range: string,
  formula: string,
  goal: string,
): Promise<void> {
  const [scenario] = read([file]);
  if (!scenario) return;
  const [{ seek }, { soughtText }] = await Promise.all([
    import('./seek.ts'),
    import('./page/soughtText.ts'),
  ]);
  const found = await seek(scenario.file, scenario.text, place, range, formula, goal);
  if ('fault' in found) {
    refuse(found.fault);
    return;
  }
  process.stdout.write(`${printableLines(soughtText(found.sought))}\n`);
  if (found.sought.solutions.length === 0) process.exitCode = 1;
}

/** Writes a new scenario; never over a file that is there. */
async function start(file: string): Promise<void> {
  if (readIfThere(file) !== undefined || isFolder(file)) {
    refuse(`${file} is there already; name another file`);
    return;
  }
  const { startingScenario } = await import('./notebook/startingScenario.ts');
  if (writeWhole(dirname(file), file, startingScenario))
    process.stderr.write(`scenario: ${file}\nfill it in, then run: torqueleaf report ${file}\n`);
}

async function printSchema(): Promise<void> {
  const { scenarioJsonSchema } = await import('./notebook/scenarioJsonSchema.ts');
  process.stdout.write(`${JSON.stringify(scenarioJsonSchema(), null, 1)}\n`);
}

/** Prints the catalogue, or one lift with a drawing of its first and last posture. */
async function showLifts(name?: string, file?: string): Promise<void> {
  const [scenario] = file === undefined ? [] : read([file]);
  const known = scenario && (await liftsIn(scenario));
  if (file !== undefined && !known) return;
  const [{ liftsByJoint, lookUpLift }, { liftDrawing, liftList, liftPage }, { renderTerminal }] =
    await Promise.all([
      import('./lookUpLift.ts'),
      import('./page/liftPage.ts'),
      import('./page/terminal.ts'),
    ]);
  if (name === undefined) {
    process.stdout.write(`${renderTerminal(liftList(liftsByJoint(known)), width())}\n`);
    return;
  }
  const found = lookUpLift(name, known);
  if ('suggestion' in found) {
    const hint = found.suggestion === undefined ? '' : `; did you mean "${found.suggestion}"?`;
    refuse(`there is no lift "${name}"${hint}`);
    return;
  }
  process.stdout.write(
    `${printableLines(liftDrawing(found))}\n\n${renderTerminal(liftPage(found), width())}\n`,
  );
}

/** The lifts that a scenario may use; prints its problems. */
async function liftsIn({ file, text }: Evaluated) {
  const [{ liftsKnownTo }, { formatProblems }] = await Promise.all([
    import('./run.ts'),
    import('./notebook/problem.ts'),
  ]);
  const found = await liftsKnownTo(file, text);
  if ('lifts' in found) return found.lifts;
  process.stderr.write(`${formatProblems(found.problems, () => text)}\n`);
  process.exitCode = 1;
  return undefined;
}

/** Loaded on use, so that --help answers at once. */
async function loadPage() {
  const [markdown, terminal, full, json] = await Promise.all([
    import('./page/markdown.ts'),
    import('./page/terminal.ts'),
    import('./page/fullReport.ts'),
    import('./page/resultsJson.ts'),
  ]);
  return { ...markdown, ...terminal, ...full, ...json };
}

/** Runs one scenario; prints its problems and notes. */
async function evaluate({ file, text }: Evaluated, most?: number) {
  const [{ run }, { formatProblems }] = await Promise.all([
    import('./run.ts'),
    import('./notebook/problem.ts'),
  ]);
  const { results, problems, notes, broken } = {
    notes: [],
    broken: [],
    ...(await run(file, text)),
  };
  const messages = problems ?? [...broken, ...notes];
  if (messages.length > 0) process.stderr.write(`${formatProblems(messages, () => text, most)}\n`);
  if (problems || broken.length > 0) process.exitCode = 1;
  return results;
}

/** Texts of the files named, or of every scenario in the usual folder. */
function read(files: readonly string[]): Evaluated[] {
  const named = files.length > 0 ? files : scenariosIn(fallbackFolder);
  const taken = new Map<string, string>();
  return named.flatMap((file) => {
    const name = reportName(file);
    const twin = taken.get(name);
    if (twin !== undefined && twin !== file)
      return refuse(`${file} and ${twin} would both write ${name}; rename one of them`);
    taken.set(name, file);
    if (isFolder(file)) return refuse(`${file} is a folder; name the files in it (${file}/*.yaml)`);
    const text = readIfThere(file);
    return text === undefined
      ? refuse(`${file} cannot be read; is the name right?`)
      : [{ file, text }];
  });
}

function scenariosIn(folder: string): string[] {
  if (!isFolder(folder)) return refuse(`there is no folder ${folder}/ here; name a scenario file`);
  return readdirSync(folder)
    .filter((name) => /\.ya?ml$/.test(name))
    .sort()
    .map((name) => join(folder, name));
}

/** A wrong call: one plain line, exit code 2, nothing to work on. */
function refuse(message: string): [] {
  process.stderr.write(`${printableLines(message)}\n`);
  process.exitCode = 2;
  return [];
}

/** A scenario's names and texts may hold commands to the terminal. */
const printableLines = (text: string) => text.split('\n').map(printable).join('\n');

function isFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
}

function readIfThere(path: string): string | undefined {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return undefined;
  }
}

/** Writes a file whole or not at all: first beside it, then by renaming. */
function writeWhole(folder: string, path: string, text: string): boolean {
  try {
    mkdirSync(folder, { recursive: true });
    writeFileSync(`${path}.part`, text);
    renameSync(`${path}.part`, path);
    return true;
  } catch {
    refuse(`${path} cannot be written; choose another folder with --out`);
    return false;
  }
}

const reportName = (file: string) => basename(file).replace(/\.ya?ml$/, '.md');

const width = () => Math.min(Math.max(process.stdout.columns ?? 80, 38), 100);

async function main(): Promise<void> {
  // A reader that closes the pipe early (`| head`) is not a fault.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
  });
  try {
    await program.parseAsync();
  } catch (error) {
    if (!(error instanceof Error && 'exitCode' in error)) throw error;
    process.exitCode = error.exitCode === 0 ? 0 : 2;
  }
}

void main();
