/** The grower's texts as checked data: orchard, reports and diary together, all mistakes at once. Files are read elsewhere. */
import type { Soil } from './need/facts.ts';
import { DIARY_FILE, ORCHARD_FILE } from './orchard/files.ts';
import type { Diary, Entry } from './orchard/diary.ts';
import type { Orchard, ZoneTest } from './orchard/load.ts';
import type { OwnRules } from './orchard/own-rules.ts';
import { loadOrchard } from './orchard/load.ts';
import type { Tree } from './orchard/tree.ts';
import type { PhSoil } from './ph/soil.ts';
import { phSoilOf } from './ph/soil.ts';
import type { Region } from './rating/rate.ts';
import { rateSample } from './rating/rate.ts';
import type { Rated } from './rating/rate.ts';
import { inOrder, SAID_BY_STOPS, senseOf } from './rating/sense.ts';
import { knownHeaviness } from './rating/texture.ts';
import type { Notice, Place, Question } from './reason/notice.ts';
import { notice } from './reason/notice.ts';
import { suggest } from './reason/suggest.ts';
import type { Advice } from './soil/advice.ts';
import { adviceOf } from './soil/advice.ts';
import type { Report } from './soil/read.ts';
import { readReport } from './soil/read.ts';
import type { Sample } from './soil/reading.ts';
import type { Day } from './units/date.ts';
import { dateOrderIn } from './units/date.ts';
import type { Season } from './when/season.ts';
import { seasonOf } from './when/season.ts';


/** `earlier` are other soil tests of the zone, the oldest first. */
export type ZoneSoil = { readonly zone: string; readonly earlier: readonly Tested[]; readonly sample: Sample; readonly soil: Soil; readonly ph: PhSoil | null; readonly advice: readonly Advice[]; readonly byLab: boolean };

export type Tested = { readonly sample: Sample; readonly rated: readonly Rated[] };

export type Gathered = {
  /** Null where the orchard file holds a mistake. */
  readonly orchard: Orchard | null;
  readonly zones: readonly ZoneSoil[];
  readonly reports: ReadonlyMap<string, Report>;
  readonly diary: readonly Entry[];
  readonly notices: readonly Notice[];
  readonly questions: readonly Question[];
};

/** A report's text, with what there is to say of how it was read; or why it cannot be had. */
export type ReportText = { readonly text: string; readonly notices?: readonly Notice[] } | { readonly refused: Notice };

/** `read` reads a report; a page that gathers at every touch keeps what it has read. */
export function gather(source: string, reportText: (file: string, place: Place) => ReportText, diary: Diary, today: Day, own: OwnRules = { rules: [], notices: [] }, read = readReport): Gathered {
  const { orchard: loaded, notices: found, questions } = loadOrchard(source, ORCHARD_FILE);
  const notices = [...found, ...own.notices];
  const orchard = loaded && { ...loaded, rules: own.rules };
  if (!orchard) return { orchard, zones: [], reports: new Map(), diary: [], notices, questions };
  const all = [...notices];
  const reports = new Map<string, Report>();
  const told = new Map<string, readonly Notice[]>();
  const absent = new Set<string>();
  for (const { file, place } of orchard.zones.flatMap((z) => [z, ...z.others])) {
    if (reports.has(file) || absent.has(file)) continue;
    const found = reportText(file, place);
    if ('refused' in found) {
      all.push(found.refused);
      absent.add(file);
      continue;
    }
    const report = read(found.text, file, dateOrderIn(orchard.where.country));
    reports.set(file, report);
    told.set(file, [...(found.notices ?? []), ...report.notices]);
  }
  const soils = zonesOf(orchard, reports, today);
  // What is unclear in an earlier report changes nothing any more.
  const current = (file: string): boolean => soils.files.has(file) || !soils.earlier.has(file);
  for (const [file, list] of told) for (const n of list) if (n.severity === 'error' || current(file)) all.push(n);
  const asked = [...reports].flatMap(([file, report]) => (current(file) ? report.questions : []));
  const used = new Set(soils.zones.map((z) => z.sample.name));
  const asking = asked.filter((q) => q.facts.sample === '' || q.facts.sample === undefined || used.has(String(q.facts.sample)));
  return {
    orchard, zones: soils.zones, reports, diary: diary.entries, questions: [...questions, ...inOrder(asking)],
    notices: [...all, ...soils.notices, ...oddities(soils.zones, today), ...diary.notices, ...strangers(orchard, diary.entries), ...seasonMistakes(orchard, seasonOf(orchard, today))],
  };
}

/** What is odd in the samples in use, each told once; what the plan's stops say of each tree is left to them. */
function oddities(zones: readonly ZoneSoil[], today: Day): Notice[] {
  const each = new Map(zones.map((z) => [z.sample, z]));
  return [...each.values()].flatMap((z) => senseOf(z.sample, z.soil.rated, { today })).filter((n) => !SAID_BY_STOPS.includes(n.code));
}

/** A diary line whose tree stands in no file would be lost without a word. */
function strangers(orchard: Orchard, entries: readonly Entry[]): Notice[] {
  const known = [...orchard.trees.map((t) => t.name), ...orchard.zones.map((z) => z.name)];
  const names = new Set(known.map((n) => n.toLowerCase()));
  return entries.flatMap((e) => e.trees.filter((t) => !names.has(t.toLowerCase()) && !/^(?:all|all trees|everything)$/i.test(t))
    .map((read) => notice('diary-tree', 'warning', { read, guess: suggest(read, known).join(', ') }, { file: DIARY_FILE, line: e.line, column: 1, length: 1, source: '' })));
}

/** The soil of each zone out of its newest report; a sample that a report does not hold is a mistake, and so is a leaf's. */
function zonesOf(orchard: Orchard, reports: ReadonlyMap<string, Report>, today: Day): { zones: ZoneSoil[]; notices: Notice[]; files: ReadonlySet<string>; earlier: ReadonlySet<string> } {
  const notices: Notice[] = [];
  const [files, before] = [new Set<string>(), new Set<string>()];
  const sampleOf = (test: ZoneTest): Sample | null => {
    const found = sampleIn(test, reports.get(test.file)?.samples ?? []);
    if ('wrong' in found) notices.push(...found.wrong);
    return 'sample' in found ? found.sample : null;
  };
  const zones = orchard.zones.flatMap((zone): ZoneSoil[] => {
    const tests = [zone, ...zone.others].flatMap((test) => {
      const sample = sampleOf(test);
      return sample ? [{ test, sample }] : [];
    });
    const undated = tests.filter((t) => t.sample.taken === undefined);
    if (tests.length > 1) for (const { test } of undated) notices.push(notice('test-undated', 'error', { file: test.file, zone: zone.name }, test.place));
    for (const t of tests) if (t.sample.taken !== undefined && t.sample.taken > today) notices.push(notice('test-future', 'warning', { file: t.test.file, day: t.sample.taken }, t.test.place));
    const twin = tests.find((t, i) => t.sample.taken !== undefined && tests.slice(0, i).some((u) => u.sample.taken === t.sample.taken));
    if (twin) notices.push(notice('test-same-day', 'error', { zone: zone.name, day: twin.sample.taken! }, twin.test.place));
    const [newest, ...earlier] = tests.toSorted((a, b) => ((a.sample.taken ?? '') < (b.sample.taken ?? '') ? 1 : -1));
    if (!newest) return [];
    const region = { ...orchard.where, crops: cropsOf(orchard.trees.filter((t) => t.zone === zone.name)) };
    const { test, sample } = newest;
    files.add(test.file);
    for (const t of earlier) before.add(t.test.file);
    return [{ zone: zone.name, earlier: earlier.toReversed().map((t) => ({ sample: t.sample, rated: rateSample(t.sample, region) })), sample, advice: adviceOf(sample), byLab: test.byLab, ...soilOf(sample, region) }];
  });
  return { zones, notices, files, earlier: before };
}

/** `wrong` may hold a mistake beside the sample. A report that cannot be read has said so already. */
function sampleIn({ file, sample: said, place }: ZoneTest, samples: readonly Sample[]): { sample: Sample; wrong: Notice[] } | { wrong: Notice[] } {
  if (samples.length === 0) return { wrong: [] };
  const sample = said === null ? samples[0] : samples.find((s) => s.name.toLowerCase() === said.toLowerCase()) ?? numbered(said, samples);
  if (!sample) {
    const names = samples.map((s) => s.name);
    return { wrong: [notice('sample-unknown', 'error', { read: said ?? file, file, guess: suggest(said ?? '', names).join(', '), known: names.join(', ') }, place)] };
  }
  const unnamed = said === null && samples.length > 1 ? [notice('sample-unnamed', 'error', { file, known: samples.map((s) => s.name).join(', ') }, place)] : [];
  return sample.kind === 'leaf' ? { wrong: [...unnamed, notice('leaf-as-soil', 'error', { file, example: leafExample(sample) }, place)] } : { sample, wrong: unnamed };
}

/** What grows there: a crop, or its word where no figures are held for it. */
export const cropsOf = (trees: readonly Tree[]): string[] => trees.map((t) => (t.crop === 'other' ? t.word : t.crop));

function soilOf(sample: Sample, region: Region): Pick<ZoneSoil, 'soil' | 'ph'> {
  const rated = rateSample(sample, region);
  return { soil: { rated, heaviness: knownHeaviness(sample) }, ph: phSoilOf(rated, sample.depth) };
}

/** How a leaf's nitrogen is written to a tree: "N 2.1 %", or as this sample has it. */
export function leafExample({ readings }: Sample): string {
  const n = readings.find((r) => r.item === 'nitrogen' && r.value !== null && r.unit === '%');
  return `N ${n?.value ?? 2.1} %`;
}

/** "sample 2" finds the second sample of a report that names its samples otherwise. */
function numbered(said: string, samples: readonly Sample[]): Sample | undefined {
  const m = /^sample (\d+)$/i.exec(said);
  return m ? samples[Number(m[1]) - 1] : undefined;
}

/** Mistakes that only the season shows. */
export function seasonMistakes(orchard: Orchard, season: Season): Notice[] {
  return orchard.trees.flatMap((tree) => {
    const found: Notice[] = [];
    if (tree.planted && tree.planted.year > season.year) found.push(notice('planted-future', 'error', { tree: tree.name, read: tree.planted.year, season: season.year }, tree.place));
    if (tree.planted && tree.planted.year < season.year - 300) found.push(notice('planted-long-ago', 'error', { tree: tree.name, read: tree.planted.year }, tree.place));
    if (tree.across !== undefined && tree.across > 40) found.push(notice('crown-impossible', 'error', { tree: tree.name }, tree.place));
    if ([...(tree.bed ?? []), ...(tree.spacing ?? [])].some((m) => m > 100)) found.push(notice('ground-impossible', 'error', { tree: tree.name }, tree.place));
    return found;
  });
}
