/** The command line: each command is loaded when it is asked for. */
import { Command, CommanderError, InvalidArgumentError, Option } from 'commander';
import type { Day } from '../units/date.ts';
import { suggest } from '../reason/suggest.ts';
import { say } from '../words/words.ts';
import type { Common, Io } from './io.ts';
import { EXIT, tame } from './io.ts';

const L = 'en-US';
const w = (key: Parameters<typeof say<'say'>>[2], facts = {}): string => say(L, 'say', key, facts);

function today(read: string): Day {
  const at = new Date(`${read}T00:00:00Z`);
  if (!/^\d{4}-\d{2}-\d{2}$/.test(read) || Number.isNaN(at.getTime()) || at.toISOString().slice(0, 10) !== read) throw new InvalidArgumentError(w('today-wrong', { read }));
  return read;
}

/** Runs a command; resolves to the exit code. */
export async function run(argv: readonly string[], io: Io): Promise<number> {
  let code: number = EXIT.fine;
  const json = argv.includes('--json');
  const program = new Command('medlar').description(w('help')).version(MEDLAR_VERSION).exitOverride()
    .configureOutput({ writeOut: (t) => io.out(t), writeErr: (t) => (json ? undefined : io.err(tame(t))) })
    .addHelpText('after', `\n${w('help-after')}`).helpCommand(false).enablePositionalOptions();
  const common = (c: Command): Command => c
    .option('--json', w('opt-json')).option('--folder <dir>', w('opt-folder')).addOption(new Option('--today <day>', w('opt-today')).argParser(today))
    .exitOverride();
  const command = (name: string, about: Parameters<typeof w>[0]): Command => common(program.command(name).description(w(about)));
  const sheetOptions = (c: Command): Command => c.addOption(new Option('--as <form>', w('opt-as')).choices(['html', 'text']))
    .addOption(new Option('--paper <size>', w('opt-paper')).choices(['a4', 'letter'])).option('--large', w('opt-large')).option('--force', w('opt-force'));

  command('read', 'cmd-read').argument('[report]').action(async (report: string | undefined, _: unknown, self: Command) => {
    code = await (await import('./read.ts')).readCommand(report, self.optsWithGlobals<Common>(), io);
  });
  command('plan', 'cmd-plan').argument('[tree]').action(async (tree: string | undefined, _: unknown, self: Command) => {
    code = (await import('./plan.ts')).planCommand(tree, self.optsWithGlobals<Common>(), io);
  });
  sheetOptions(command('sheet', 'cmd-sheet').argument('[tree]')).action(async (tree: string | undefined, _: unknown, self: Command) => {
    code = await (await import('./sheet.ts')).sheetCommand(tree, self.optsWithGlobals<Common>(), io);
  });
  command('why', 'cmd-why').argument('<tree>').argument('[what]').action(async (tree: string, what: string | undefined, _: unknown, self: Command) => {
    code = (await import('./why.ts')).whyCommand(tree, what, self.optsWithGlobals<Common>(), io);
  });
  command('check', 'cmd-check').action(async (_: unknown, self: Command) => {
    code = (await import('./check.ts')).checkCommand(self.optsWithGlobals<Common>(), io);
  });
  command('schema', 'cmd-schema').argument('[command]').action(async (name: string | undefined, _: unknown, self: Command) => {
    code = (await import('./schema.ts')).schemaCommand(name, self.optsWithGlobals<Common>(), io);
  });
  common(program).action(async (o: Common, self: Command) => {
    const [unknown] = self.args;
    if (unknown !== undefined) {
      const guess = suggest(unknown, program.commands.map((c) => c.name())).join(', ');
      self.error(w('command-unknown', { read: unknown, guess }));
    }
    code = (await import('./here.ts')).hereCommand(o, io, () => program.helpInformation());
  });
  program.allowExcessArguments(true);

  try {
    await program.parseAsync([...argv], { from: 'user' });
    return code;
  } catch (e) {
    if (!(e instanceof CommanderError)) throw e;
    if (e.exitCode === 0) return EXIT.fine;
    if (json) {
      const { give } = await import('./answer.ts');
      give({ command: argv.find((a) => !a.startsWith('-')) ?? 'medlar', result: null, language: L, notices: [{ code: 'usage', severity: 'error', facts: { why: e.message } }], code: EXIT.usage }, true, io);
    }
    return EXIT.usage;
  }
}
