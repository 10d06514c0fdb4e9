/** The command line: each command is loaded when it is asked for. */
import { Command, CommanderError, InvalidArgumentError, Option } from 'commander';
import type { Day } from '../units/date.ts';
import { canBeToday } from '../units/date.ts';
import { suggest } from '../reason/suggest.ts';
import { EXAMPLES } from '../words/examples.ts';
import { say } from '../words/words.ts';
import type { Common, Io } from './io.ts';
import { EXIT, tame } from './io.ts';

const L = 'en-US';
const w = (key: Parameters<typeof say<'say'>>[2], facts = {}): string => say(L, 'say', key, facts);

function today(read: string): Day {
  const at = new Date(`${read}T00:00:00Z`);
  if (!/^\d{4}-\d{2}-\d{2}$/.test(read) || Number.isNaN(at.getTime()) || at.toISOString().slice(0, 10) !== read || !canBeToday(read)) throw new InvalidArgumentError(w('today-wrong', { read }));
  return read;
}

const everyday = (): Promise<typeof import('./everyday.ts')> => import('./everyday.ts');

/** Runs a command; resolves to the exit code. */
export async function run(argv: readonly string[], io: Io): Promise<number> {
  let code: number = EXIT.fine;
  const json = argv.includes('--json');
  const program = new Command('medlar').description(w('help')).version(MEDLAR_VERSION).exitOverride()
    .configureOutput({ writeOut: (t) => io.out(t), writeErr: (t) => (json ? undefined : io.err(tame(t))) })
    .addHelpText('after', `\n${w('help-after')}`).helpCommand(false).enablePositionalOptions();
  program.hook('preAction', async (_, self) => { await (await everyday()).speak(self.optsWithGlobals<Common>(), io); });
  const common = (c: Command): Command => c
    .option('--json', w('opt-json')).option('--folder <dir>', w('opt-folder')).addOption(new Option('--today <day>', w('opt-today')).argParser(today))
    .exitOverride();
  const command = (name: string, about: Parameters<typeof w>[0]): Command => {
    const made = common(program.command(name).description(w(about))).showHelpAfterError(w('help-hint', { command: name }));
    const lines = EXAMPLES[name];
    return lines ? made.addHelpText('after', `\n${w('examples')}\n  ${lines.join('\n  ')}`) : made;
  };
  const sheetOptions = (c: Command): Command => c.addOption(new Option('--as <form>', w('opt-as')).choices(['html', 'text', 'ics'])).option('--open', w('opt-open'))
    .addOption(new Option('--paper <size>', w('opt-paper')).choices(['a4', 'letter'])).option('--large', w('opt-large')).option('--force', w('opt-force'));

  const again = (value: string, before: readonly string[] = []): readonly string[] => [...before, value];
  command('new', 'cmd-new').option('--name <text>', w('opt-name')).option('--where <text>', w('opt-where')).option('--bud-break <day>', w('opt-bud-break')).option('--last-frost <day>', w('opt-last-frost')).option('--first-frost <day>', w('opt-first-frost'))
    .option('--tree <line>', w('opt-tree'), again).option('--zone <name>', w('opt-zone'), again).option('--shed <bag>', w('opt-shed'), again).option('--store <bag>', w('opt-store'), again)
    .action(async (_: unknown, self: Command) => {
      code = await (await everyday()).newCommand(self.optsWithGlobals<Common>(), io);
    });
  command('read', 'cmd-read').argument('[report]').action(async (report: string | undefined, _: unknown, self: Command) => {
    code = await (await everyday()).readCommand(report, self.optsWithGlobals<Common>(), io);
  });
  command('plan', 'cmd-plan').argument('[tree]').option('--batch', w('opt-filter')).action(async (tree: string | undefined, _: unknown, self: Command) => {
    const options = self.optsWithGlobals<Common & { batch?: true }>();
    code = options.batch ? await (await everyday()).batch(io, options.today ?? io.today) : await (await everyday()).planCommand(tree, options, io);
  });
  sheetOptions(command('sheet', 'cmd-sheet').argument('[tree]')).action(async (tree: string | undefined, _: unknown, self: Command) => {
    code = await (await everyday()).sheetCommand(tree, self.optsWithGlobals<Common>(), io);
  });
  command('diary', 'cmd-diary').addHelpText('after', () => `\n${w('diary-help')}`).argument('[sentence...]').option('--again', w('opt-again')).action(async (sentence: string[], _: unknown, self: Command) => {
    code = await (await everyday()).diaryCommand(sentence, self.optsWithGlobals<Common & { again?: true }>(), io);
  });
  command('why', 'cmd-why').argument('<tree>').argument('[what]').addOption(new Option('--as <form>', w('opt-why-as')).choices(['sentence', 'tree', 'sum'])).action(async (tree: string, what: string | undefined, _: unknown, self: Command) => {
    code = await (await everyday()).whyCommand(tree, what, self.optsWithGlobals<Common & { as?: 'sentence' | 'tree' | 'sum' }>(), io);
  });
  command('years', 'cmd-years').addOption(new Option('--as <form>', w('opt-years-as')).choices(['html', 'text'])).option('--open', w('opt-open')).option('--force', w('opt-force')).action(async (_: unknown, self: Command) => {
    code = await (await everyday()).yearsCommand(self.optsWithGlobals<Common & { as?: 'html' | 'text'; open?: true; force?: true }>(), io);
  });
  command('shop', 'cmd-shop').argument('[bag...]').option('--need <need>', w('opt-need')).action(async (bags: string[], _: unknown, self: Command) => {
    code = await (await everyday()).shopCommand(bags, self.optsWithGlobals<Common & { need?: string }>(), io);
  });
  command('weigh', 'cmd-weigh').argument('<need>').argument('<bag...>').action(async (need: string, bags: string[], _: unknown, self: Command) => {
    code = await (await everyday()).weighCommand(need, bags, self.optsWithGlobals<Common>(), io);
  });
  command('blend', 'cmd-blend').argument('<bag...>').option('--balanced', w('opt-balanced')).option('--to <grade>', w('opt-to')).option('--batch <weight>', w('opt-batch')).action(async (bags: string[], _: unknown, self: Command) => {
    code = await (await everyday()).blendCommand(bags, self.optsWithGlobals<Common & { balanced?: true; to?: string; batch?: string }>(), io);
  });
  command('ph', 'cmd-ph').argument('[zone]').option('--now <ph>', w('opt-now')).option('--goal <ph>', w('opt-goal')).option('--texture <words>', w('opt-texture')).option('--buffer <ph>', w('opt-buffer')).option('--method <buffer>', w('opt-method'))
    .option('--acidity <n>', w('opt-acidity')).option('--cec <n>', w('opt-cec')).option('--carbonate <n>', w('opt-carbonate')).option('--fizz <word>', w('opt-fizz')).option('--organic-matter <n>', w('opt-organic')).option('--lime <rate>', w('opt-lime')).option('--depth <length>', w('opt-depth')).option('--area <area>', w('opt-area')).option('--material <label>', w('opt-material')).option('--crop <word>', w('opt-crop'))
    .option('--where <place>', w('opt-lime-where')).option('--aluminium <n>', w('opt-aluminium')).option('--base-saturation <n>', w('opt-base-saturation')).option('--calcium <n>', w('opt-calcium')).option('--magnesium <n>', w('opt-magnesium')).option('--lbc <n>', w('opt-lbc')).option('--ecec <n>', w('opt-ecec'))
    .action(async (zone: string | undefined, _: unknown, self: Command) => {
      code = await (await everyday()).phCommand(zone, self.optsWithGlobals<Common>(), io);
    });
  command('sources', 'cmd-sources').argument('[word...]').option('--coverage', w('opt-coverage')).addOption(new Option('--as <form>', w('opt-sources-as')).choices(['html', 'text'])).action(async (words: string[], _: unknown, self: Command) => {
    code = (await import('./sources.ts')).sourcesCommand(words, self.optsWithGlobals<Common & { coverage?: true; as?: 'html' | 'text' }>(), io);
  });
  command('page', 'cmd-page').argument('[file]').option('--site <dir>', w('opt-site')).option('--force', w('opt-force-page')).action(async (file: string | undefined, _: unknown, self: Command) => {
    code = await (await everyday()).pageCommand(file, self.optsWithGlobals<Common & { site?: string; force?: true }>(), io);
  });
  command('check', 'cmd-check').action(async (_: unknown, self: Command) => {
    code = await (await everyday()).checkCommand(self.optsWithGlobals<Common>(), io);
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
    code = await (await everyday()).hereCommand(o, io, () => program.helpInformation());
  });
  program.allowExcessArguments(true);

  try {
    await program.parseAsync([...argv], { from: 'user' });
    return code;
  } catch (e) {
    if (!(e instanceof CommanderError)) throw e;
    if (e.exitCode === 0) return EXIT.fine;
    if (json) {
      const { give } = await everyday();
      give({ command: argv.find((a) => !a.startsWith('-')) ?? 'medlar', result: null, language: L, notices: [{ code: 'usage', severity: 'error', facts: { why: e.message } }], code: EXIT.usage }, true, io);
    }
    return EXIT.usage;
  }
}
