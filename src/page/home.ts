/** Where the page opens: what stands in it, the next step, the facts of the whole orchard, and the files. */
import { DIARY_FILE } from '../orchard/diary.ts';
import { button, download, el, field, fill, list, textInput } from './dom.ts';
import { ORCHARD_FILE } from '../gather.ts';
import { noticeText } from '../json/notices.ts';
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import { decodeReport, guessNotice } from '../soil/decode.ts';
import { mistakesOf } from './seen.ts';
import { EMPTY, bagLines, factOf, treeLines, withFact, zoneFiles } from './state.ts';
import type { State } from './state.ts';
import type { Context, View } from './view.ts';
import { wordsOf } from './view.ts';

const FACTS = [
  { key: 'orchard', label: 'fact-orchard', hint: 'hint-orchard' }, { key: 'where', label: 'fact-where', hint: 'hint-where' },
  { key: 'bud-break', label: 'fact-bud-break', hint: 'hint-date' }, { key: 'first-frost', label: 'fact-first-frost', hint: 'hint-date' },
] as const;
const NEXT = { report: 'next-report', trees: 'next-trees', bags: 'next-bags', plan: 'next-plan' } as const;
const baseName = (path: string): string => path.split('/').pop()!;

/** The first thing that is still wanting. */
function nextPart(state: State): keyof typeof NEXT {
  if (Object.keys(state.reports).length === 0) return 'report';
  if (treeLines(state.orchard).length === 0) return 'trees';
  if (bagLines(state.orchard, 'shed').length + bagLines(state.orchard, 'store').length === 0) return 'bags';
  return 'plan';
}

export function homeView(ctx: Context): View {
  const w = wordsOf(ctx);
  const stands = el('p', { id: 'stands' });
  const next = el('p', {});
  const fields = FACTS.map(({ key, label, hint }) => {
    const f = field(w(label), textInput(`fact-${key}`), w(hint));
    f.input.addEventListener('change', () => { f.mistakes(ctx.edit((text) => withFact(text, key, f.input.value.trim()))); });
    return { ...f, key };
  });
  const { root: filesRoot, refresh: refreshFiles } = files(ctx);
  const whole = field(w('whole'), el('textarea', { id: 'whole', rows: 12, spellcheck: 'false', autocapitalize: 'off', autocomplete: 'off' }), w('whole-hint'));
  const wrong = el('div', { id: 'whole-wrong', class: 'wrong' });
  whole.input.addEventListener('change', () => { ctx.take({ ...ctx.state(), orchard: whole.input.value }); });

  const root = el('div', {},
    el('p', { class: 'lead' }, w('lead')), stands, next,
    el('h3', {}, w('place')), ...fields.map((f) => f.root),
    filesRoot,
    el('details', {}, el('summary', {}, w('by-hand')), whole.root, wrong),
  );
  const refresh = (): void => {
    const state = ctx.state();
    const trees = treeLines(state.orchard).length;
    const samples = [...ctx.early().reports.values()].reduce((n, r) => n + r.samples.filter((s) => s.readings.length > 0).length, 0);
    stands.textContent = w('stands', { trees, samples, bags: bagLines(state.orchard, 'shed').length + bagLines(state.orchard, 'store').length });
    const part = nextPart(state);
    fill(next, button(w(NEXT[part]), () => { ctx.go(part); }, { class: 'main', id: 'next' }), ' ', button(w('at-store'), () => { ctx.go('store'); }, { id: 'at-store' }));
    for (const f of fields) if (document.activeElement !== f.input && !f.input.hasAttribute('aria-invalid')) f.input.value = factOf(state.orchard, f.key);
    if (document.activeElement !== whole.input) whole.input.value = state.orchard;
    const { notices } = ctx.seen();
    const placed = notices.filter((n) => n.severity === 'error' && n.place?.file === ORCHARD_FILE);
    fill(wrong, trees === 0 && placed.every((n) => n.code === 'trees-missing') ? null : list(mistakesOf({ ...ctx.seen(), notices: placed }).map((text, i) => w('on-line', { line: placed[i]!.place!.line, text }))));
    refreshFiles();
  };
  return { root, refresh };
}

/** What was last done; it outlives a page drawn anew. */
let done = '';

/** Opening, saving, handing on, forgetting. */
function files(ctx: Context): View {
  const w = wordsOf(ctx);
  const said = el('p', { id: 'files-said', role: 'status' });
  const input = el('input', { id: 'open', type: 'file', multiple: true, accept: '.yaml,.yml,.txt,.csv,text/plain' });
  const opened = field(w('open'), input, w('open-hint'));
  input.addEventListener('change', () => {
    void openAll([...(input.files ?? [])], ctx.state()).then(({ state, names, notices }) => {
      input.value = '';
      done = [...(names.length > 0 ? [w('opened', { names: names.join(', ') })] : []), ...notices.map((n) => noticeText(n, ctx.language))].join(' ');
      ctx.take(state);
    });
  });
  const saves = el('p', { class: 'row' });
  const kept = el('p', { id: 'kept' });
  const forget = button(w('forget'), () => {
    if (forget.dataset['sure'] !== 'yes') {
      forget.dataset['sure'] = 'yes';
      forget.textContent = w('forget-sure');
      return;
    }
    done = w('forgotten');
    ctx.take(EMPTY);
  }, { id: 'forget' });
  const refresh = (): void => {
    const { orchard, reports } = ctx.state();
    const names = Object.keys(reports);
    fill(saves,
      button(w('save-orchard'), () => { download(ORCHARD_FILE, ctx.state().orchard, 'text/yaml'); }, { id: 'save-orchard', disabled: orchard === '' }),
      ...names.map((name, i) => button(names.length > 1 ? w('save-named', { name: baseName(name) }) : w('save-report'), () => { download(baseName(name), ctx.state().reports[name] ?? '', 'text/plain'); }, { id: `save-report-${i}` })),
      button(w('save-copy'), () => { download('medlar.html', ctx.copy(), 'text/html'); }, { id: 'save-copy', disabled: orchard === '' }));
    said.textContent = done;
    kept.textContent = ctx.kept() ? w('kept') : w('not-kept');
    delete forget.dataset['sure'];
    forget.textContent = w('forget');
  };
  return { root: el('div', {}, el('h3', {}, w('files')), opened.root, saves, said, kept, el('p', {}, forget)), refresh };
}

/** `orchard.yaml` is known by its ending; all else is a report, under the name that the orchard gives it. A file that is no text is left out and named. */
async function openAll(chosen: readonly File[], before: State): Promise<{ state: State; names: string[]; notices: Notice[] }> {
  let state = before;
  const all = await Promise.all(chosen.map(async (file) => ({ name: file.name, found: decodeReport(new Uint8Array(await file.arrayBuffer())) })));
  const notices = all.flatMap(({ name, found }) => ('refused' in found ? [notice('not-text', 'error', { file: name, why: found.refused })] : guessNotice(found, name) ?? []));
  const texts = all.flatMap(({ name, found }) => ('text' in found ? [{ name, text: found.text }] : []));
  const orchards = texts.filter(({ name }) => /\.ya?ml$/i.test(name));
  for (const { text } of orchards) state = { ...state, orchard: text };
  const diary = texts.find(({ name }) => name.toLowerCase() === DIARY_FILE);
  if (diary) state = { ...state, diary: diary.text };
  for (const { name, text } of texts.filter((t) => !orchards.includes(t) && t !== diary)) {
    const said = zoneFiles(state.orchard).find((path) => baseName(path).toLowerCase() === name.toLowerCase());
    state = { ...state, reports: { ...state.reports, [said ?? `soil/${name}`]: text } };
  }
  // Reports that the orchard does not name would only be carried along.
  const named = zoneFiles(state.orchard);
  if (named.length > 0) state = { ...state, reports: Object.fromEntries(Object.entries(state.reports).filter(([name]) => named.includes(name))) };
  return { state, names: texts.map((t) => t.name), notices };
}
