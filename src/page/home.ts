/** Where the page opens: what stands in it, the next step, the facts of the whole orchard, and the files. */
import { button, download, el, field, fill, handOn, list, textInput } from './dom.ts';
import { baseName, folderOf, opened, packed } from './files.ts';
import { noticeText } from '../json/notices.ts';
import { mistakesOf } from './seen.ts';
import { EMPTY, bagLines, factOf, treeLines, withFact } from './state.ts';
import type { State } from './state.ts';
import type { Context, View } from './view.ts';
import { wordsOf } from './view.ts';
import { ORCHARD_FILE } from '../orchard/files.ts';

const FACTS = [
  { key: 'orchard', label: 'fact-orchard', hint: 'hint-orchard' }, { key: 'where', label: 'fact-where', hint: 'hint-where' },
  { key: 'bud-break', label: 'fact-bud-break', hint: 'hint-date' }, { key: 'first-frost', label: 'fact-first-frost', hint: 'hint-date' },
] as const;
const NEXT = { report: 'next-report', trees: 'next-trees', bags: 'next-bags', plan: 'next-plan' } as const;

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
    const { notices, where } = ctx.seen();
    const placed = notices.filter((n) => n.severity === 'error' && n.place?.file === ORCHARD_FILE);
    fill(wrong, trees === 0 && placed.every((n) => n.code === 'trees-missing') ? null : list(mistakesOf({ where, notices: placed }).map((text, i) => w('on-line', { line: placed[i]!.place!.line, text }))));
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
  const input = el('input', { id: 'open', type: 'file', multiple: true, accept: '.yaml,.yml,.txt,.csv,.zip,text/plain,application/zip' });
  const open = field(w('open'), input, w('open-hint'));
  input.addEventListener('change', () => {
    const chosen = [...(input.files ?? [])];
    void Promise.all(chosen.map(async (file) => ({ path: file.name, bytes: new Uint8Array(await file.arrayBuffer()) }))).then((found) => opened(found, ctx.state())).then(({ state, names, notices }) => {
      input.value = '';
      done = [...(names.length > 0 ? [w('opened', { names: names.join(', ') })] : []), ...notices.map((n) => noticeText(n, ctx.language))].join(' ');
      ctx.take(state);
    });
  });
  const saves = el('p', { class: 'row' });
  const single = el('p', { class: 'row' });
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
    const state = ctx.state();
    const all = folderOf(state);
    fill(saves,
      button(w('save-all'), () => { void packed(ctx.state()).then((zip) => { download(`${plainName(factOf(ctx.state().orchard, 'orchard')) || 'orchard'}.zip`, zip, 'application/zip'); }); }, { id: 'save-all', disabled: all.length === 0 }),
      ...handOn('medlar.html', 'text/html', () => ctx.copy(), { save: w('save-copy'), share: w('share-copy') }, { id: 'copy', disabled: state.orchard === '' }));
    fill(single, ...all.map(([path, text], i) => button(w('save-named', { name: baseName(path) }), () => { download(baseName(path), text, 'text/plain'); }, { id: `save-file-${i}` })));
    said.textContent = done;
    kept.textContent = ctx.kept() ? w('kept') : w('not-kept');
    delete forget.dataset['sure'];
    forget.textContent = w('forget');
  };
  return { root: el('div', {}, el('h3', {}, w('files')), open.root, saves, el('details', {}, el('summary', {}, w('single-files')), single), said, kept, el('p', {}, forget)), refresh };
}

/** A name that every system takes for a file. */
const plainName = (name: string): string => name.replace(/[^\p{L}\p{N} _-]/gu, '').trim().slice(0, 60);
