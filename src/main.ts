#!/usr/bin/env node
/**
 * The command: arguments, streams and exit codes; one short function a command in `commands/`, loaded
 * on use, so that --help answers at once.
 *
 * Exit 0 done, 1 problems in the files (or reports that no longer match), 2 wrong call. Results go
 * to stdout or files, messages to stderr.
 */
import { Command } from 'commander';
import { usualFolder } from './commands/files.ts';

const program = new Command('torqueleaf')
  .description(
    'Rank training programs by how well their gains land at the joint angles that count.',
  )
  .exitOverride()
  .configureOutput({ writeErr: (text) => process.stderr.write(text) });

program
  .command('report')
  .description('evaluate scenarios, print the ranking and write a markdown report of each')
  .argument('[files...]', `scenario files; every .yaml file of ${usualFolder}/ when left out`)
  .option('--out <folder>', 'where the reports go', 'reports')
  .option('--full', 'print the whole report, not only the ranking')
  .option('--json', 'print results as data and write no report')
  .action(async (files: string[], options: { out: string; full?: true; json?: true }) =>
    (await import('./commands/report.ts')).report(files, options),
  );

program
  .command('check')
  .description('say everything that is wrong with scenarios, and whether their reports still match')
  .argument('[files...]', `scenario files; every .yaml file of ${usualFolder}/ when left out`)
  .option('--out <folder>', 'where the reports are', 'reports')
  .action(async (files: string[], options: { out: string }) =>
    (await import('./commands/report.ts')).check(files, options),
  );

program
  .command('lifts')
  .description('list the lifts, or draw one and say what is assumed of it')
  .argument('[name]', 'a lift, in quotes if its name has a space')
  .option('--file <scenario>', 'also the lifts that this scenario declares')
  .action(async (name: string | undefined, options: { file?: string }) =>
    (await import('./commands/lifts.ts')).showLifts(name, options.file),
  );

program
  .command('ask')
  .description('answer a formula about a scenario, or list what formulas may name and call')
  .argument('<file>', 'a scenario file')
  .argument('[formula]', 'for example: best("back squat", 110 deg) / mass')
  .action(async (file: string, formula: string | undefined) =>
    (await import('./commands/formulas.ts')).answer(file, formula),
  );

program
  .command('trace')
  .description('show where the answer to a formula comes from, down to lines, defaults and sources')
  .argument('<file>', 'a scenario file')
  .argument('<formula>', 'for example: load("deep squat", 1)')
  .action(async (file: string, formula: string) =>
    (await import('./commands/formulas.ts')).explain(file, formula),
  );

program
  .command('sweep')
  .description('put several values at one place of a scenario and answer formulas with each')
  .argument('<file>', 'a scenario file; it is not changed')
  .argument('<place>', 'for example "athlete.mass" or "programs.deep squat.work.1.to"')
  .argument('<values>', 'from : step : to, such as "80 deg : 10 deg : 120 deg", or a list')
  .argument('<formulas...>', 'for example "target_gain(\\"deep squat\\")"')
  .option(
    '--by <place = values>',
    'a second place, such as "athlete.mass = 60 kg, 70 kg"; draws a map of one formula',
  )
  .action(
    async (
      file: string,
      place: string,
      values: string,
      formulas: string[],
      options: { by?: string },
    ) => (await import('./commands/formulas.ts')).vary(file, place, values, formulas, options.by),
  );

program
  .command('seek')
  .description('find the value of one place at which a formula meets a goal, or is least or most')
  .argument('<file>', 'a scenario file; it is changed only with --write')
  .argument('<place>', 'for example "programs.deep squat.work.1.load"')
  .argument('<range>', 'where to look, such as "50 kg : 80 kg"')
  .argument('<formula>', 'for example "target_gain(\\"deep squat\\")"')
  .argument('<goal>', 'what it should be, such as 0.03 or "80 kg", or the word least or most')
  .option('--write', 'write the value into the file if there is exactly one')
  .action(
    async (
      file: string,
      place: string,
      range: string,
      formula: string,
      goal: string,
      options: { write?: true },
    ) => (await import('./commands/formulas.ts')).find(file, place, range, formula, goal, options),
  );

program
  .command('set')
  .description('write one value into a scenario and say what that did to the answer')
  .argument('<file>', 'a scenario file; all else in it stays as it is')
  .argument('<place>', 'for example "athlete.mass" or "programs.deep squat.work.1.to"')
  .argument('<value>', 'for example "66 kg"')
  .action(async (file: string, place: string, value: string) =>
    (await import('./commands/setOne.ts')).setOne(file, place, value),
  );

program
  .command('watch')
  .description('evaluate a scenario at each save and say what changed, until Ctrl-C')
  .argument('<file>', 'a scenario file')
  .action(async (file: string) => (await import('./commands/watch.ts')).watch(file));

program
  .command('compare')
  .description('say what two scenarios, or two programs of one, answer differently, and why')
  .argument('<a>', 'a scenario file, or a git revision of one such as HEAD~1:scenarios/x.yaml')
  .argument('[b]', 'another; when left out, <a> as last committed is compared with <a> as it is')
  .option('--programs <names...>', 'two programs of <a>, each in quotes; written behind the file')
  .action(async (a: string, b: string | undefined, options: { programs?: string[] }) =>
    (await import('./commands/compareTwo.ts')).compareTwo(a, b, options),
  );

program
  .command('evidence')
  .description('show how the model does on published studies, each predicted from the others')
  .option('--out <folder>', 'where the report goes', 'reports')
  .action(async (options: { out: string }) =>
    (await import('./commands/evidence.ts')).showEvidence(options),
  );

program
  .command('retest')
  .description('say what retests show: gained in the target, gained more there than elsewhere')
  .argument('<file>', 'a scenario file with retests:')
  .option('--out <folder>', 'where the report goes', 'reports')
  .option('--chat', 'print for a chat thread: blocks of 38 columns, no report')
  .action(async (file: string, options: { out: string; chat?: true }) =>
    (await import('./commands/retest.ts')).retest(file, options),
  );

program
  .command('repeatability')
  .description('say how far tests differ between days: typical error, MDC, ICC, days needed')
  .argument('<file>', 'a scenario file with repeatability:')
  .action(async (file: string) => (await import('./commands/retest.ts')).repeatability(file));

program
  .command('start')
  .description('write a new scenario with comments, to be filled in')
  .argument('[file]', 'where to write it', 'scenario.yaml')
  .action(async (file: string) => (await import('./commands/start.ts')).start(file));

program
  .command('schema')
  .description('print the JSON Schema of a scenario, for editors')
  .action(async () => (await import('./commands/start.ts')).printSchema());

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
