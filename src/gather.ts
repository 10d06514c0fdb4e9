/** The grower's texts as checked data: orchard, reports and diary together, all mistakes at once. Files are read elsewhere. */
import type { Soil } from './need/facts.ts';
import type { Diary, Entry } from './orchard/diary.ts';
import { DIARY_FILE } from './orchard/diary.ts';
import type { Orchard } from './orchard/load.ts';
import type { OwnRules } from './orchard/own-rules.ts';
import { loadOrchard } from './orchard/load.ts';
import type { Tree } from './orchard/tree.ts';
import type { PhSoil } from './ph/soil.ts';
import { phSoilOf } from './ph/soil.ts';
import type { Region } from './rating/rate.ts';
import { rateSample } from './rating/rate.ts';
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
import type { Season } from './when/season.ts';
import { seasonOf } from './when/season.ts';

export const ORCHARD_FILE = 'orchard.yaml';

export type ZoneSoil = { readonly zone: string; readonly sample: Sample; readonly soil: Soil; readonly ph: PhSoil | null; readonly advice: readonly Advice[]; readonly byLab: boolean };

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

export function gather(source: string, reportText: (file: string, place: Place) => ReportText, diary: Diary, today: Day, own: OwnRules = { rules: [], notices: [] }): Gathered {
  const { orchard: read, notices: found, questions } = loadOrchard(source, ORCHARD_FILE);
  const notices = [...found, ...own.notices];
  const orchard = read && { ...read, rules: own.rules };
  if (!orchard) return { orchard, zones: [], reports: new Map(), diary: [], notices, questions };
  const all = [...notices];
  const reports = new Map<string, Report>();
  const asked: Question[] = [];
  const absent = new Set<string>();
  for (const { file, place } of orchard.zones) {
    if (reports.has(file) || absent.has(file)) continue;
    const found = reportText(file, place);
    if ('refused' in found) {
      all.push(found.refused);
      absent.add(file);
      continue;
    }
    const report = readReport(found.text, file);
    reports.set(file, report);
    all.push(...(found.notices ?? []), ...report.notices);
    asked.push(...report.questions);
  }
  const soils = zonesOf({ ...orchard, zones: orchard.zones.filter((z) => reports.has(z.file)) }, reports);
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

/** The soil of each zone out of the reports; a sample that a report does not hold is a mistake, and so is a leaf's. */
function zonesOf(orchard: Orchard, reports: ReadonlyMap<string, Report>): { zones: ZoneSoil[]; notices: Notice[] } {
  const notices: Notice[] = [];
  const zones = orchard.zones.flatMap((zone): ZoneSoil[] => {
    const samples = reports.get(zone.file)?.samples ?? [];
    // A report that cannot be read has said so already.
    if (samples.length === 0) return [];
    const sample = zone.sample === null ? samples[0] : samples.find((s) => s.name.toLowerCase() === zone.sample!.toLowerCase()) ?? numbered(zone.sample, samples);
    if (!sample) {
      const names = samples.map((s) => s.name);
      notices.push(notice('sample-unknown', 'error', { read: zone.sample ?? zone.file, file: zone.file, guess: suggest(zone.sample ?? '', names).join(', '), known: names.join(', ') }, zone.place));
      return [];
    }
    if (zone.sample === null && samples.length > 1) notices.push(notice('sample-unnamed', 'error', { file: zone.file, known: samples.map((s) => s.name).join(', ') }, zone.place));
    if (sample.kind === 'leaf') {
      notices.push(notice('leaf-as-soil', 'error', { file: zone.file, example: leafExample(sample) }, zone.place));
      return [];
    }
    return [{ zone: zone.name, sample, advice: adviceOf(sample), byLab: zone.byLab, ...soilOf(sample, { ...orchard.where, crops: cropsOf(orchard.trees.filter((t) => t.zone === zone.name)) }) }];
  });
  return { zones, notices };
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
