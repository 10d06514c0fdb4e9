/** The trees, in walking order: a line each, changed where it stands; and a short form that writes such a line. */
import { noticeText, questionText } from '../json/notices.ts';
import type { Question } from '../reason/notice.ts';
import { CROPS_WITHOUT_FIGURES, CROP_WORDS, SIZES } from '../tables/crops.ts';
import { say } from '../words/words.ts';
import { button, choose, el, field, fill, textInput, tick } from './dom.ts';
import type { TreeLine } from './state.ts';
import { freeName, treeLines, withoutTree, withTree, withTreeFacts } from './state.ts';
import type { Context, View } from './view.ts';
import { wordsOf } from './view.ts';
import { ORCHARD_FILE } from '../orchard/files.ts';

/** A bare number gets the unit that is usual where the orchard stands. */
export const withUnit = (text: string, unit: string): string => (/^[\d.,/ ]+$/.test(text.trim()) ? `${text.trim()} ${unit}` : text.trim());
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export function treesView(ctx: Context): View {
  const w = wordsOf(ctx);
  const heading = el('h3', { id: 'trees-heading', tabindex: -1 });
  const empty = el('p', {}, w('no-trees'));
  const lines = el('ol', { class: 'trees' });
  let shown: readonly TreeRow[] = [];
  let drawn = '';
  let soon: ReturnType<typeof setTimeout> | undefined;
  const form = addForm(ctx);

  const refresh = (): void => {
    const trees = treeLines(ctx.state().orchard);
    heading.textContent = w('trees-count', { n: trees.length });
    empty.hidden = trees.length > 0;
    // Fields that stand are kept, so that typing is never cut short.
    const key = trees.map((t) => `${t.name}\n${t.oneLine}`).join('\n\n');
    if (key !== drawn) {
      drawn = key;
      shown = trees.map((t, i) => treeRow(t, i, ctx, () => { heading.focus(); }));
      fill(lines, ...shown.map((r) => r.root));
    }
    trees.forEach((t, i) => { shown[i]!.refresh(t); });
    form.refresh();
    // The plan of a large orchard takes longer than a touch should: its questions follow once the page is drawn.
    clearTimeout(soon);
    soon = setTimeout(() => {
      const { questions, plan } = ctx.seen();
      for (const row of shown) row.ask([...questions, ...(plan?.questions ?? [])]);
    });
  };
  return { root: el('div', {}, form.root, heading, empty, lines), refresh };
}

/** `ask` shows what the plan would like to know of it. */
type TreeRow = { readonly root: HTMLElement; readonly refresh: (tree: TreeLine) => void; readonly ask: (questions: readonly Question[]) => void };

function treeRow(tree: TreeLine, i: number, ctx: Context, removed: () => void): TreeRow {
  const w = wordsOf(ctx);
  const facts = field(tree.name, el('textarea', { id: `tree-${i}`, rows: 2, spellcheck: 'false', autocapitalize: 'off', autocomplete: 'off', readonly: !tree.oneLine }));
  const asked = el('ul', { class: 'hint' });
  facts.input.addEventListener('change', () => { facts.mistakes(ctx.edit((text) => withTreeFacts(text, i, facts.input.value.replace(/\s+/g, ' ').trim()))); });
  const remove = button(w('remove'), () => {
    ctx.edit((text) => withoutTree(text, i));
    removed();
  }, { 'aria-label': w('remove-named', { name: tree.name }) });
  const refresh = (now: TreeLine): void => {
    const seen = ctx.seen();
    const mine = seen.notices.filter((n) => n.severity === 'error' && n.place?.file === ORCHARD_FILE && n.place.line >= now.from && n.place.line <= now.until);
    if (!facts.input.hasAttribute('aria-invalid') && document.activeElement !== facts.input) facts.input.value = now.facts.replace(/\s*\n\s*/g, ', ');
    // A line that was not taken stays as typed, with what is wrong beside it.
    if (mine.length > 0 || facts.input.value === now.facts) facts.mistakes(mine.map((n) => noticeText(n, ctx.language)));
  };
  const ask = (all: readonly Question[]): void => {
    const questions = all.filter((q) => q.about === tree.name);
    fill(asked, ...questions.map((q) => el('li', {}, `${questionText(q, ctx.language)} ${say(ctx.language, 'ask', q.changes)}`)));
    asked.hidden = questions.length === 0;
  };
  return { root: el('li', {}, facts.root, asked, el('p', { class: 'row' }, remove)), refresh, ask };
}

function addForm(ctx: Context): View {
  const w = wordsOf(ctx);
  const us = ctx.system === 'us';
  const crop = field(w('what'), choose('add-crop', [['', w('choose')], ...Object.keys(CROP_WORDS).map((c) => [c, capital(c)] as const)]));
  crop.input.append(el('optgroup', { label: w('no-figures') }, ...CROPS_WITHOUT_FIGURES.map((c) => el('option', { value: c }, capital(c)))));
  const name = field(w('name'), textInput('add-name'), w('name-hint'));
  const size = field(w('size'), choose('add-size', [['', w('not-told')], ...SIZES.map((s) => [s, s] as const)]));
  const planted = field(w('planted'), textInput('add-planted', { inputmode: 'numeric' }), w('planted-hint'));
  const across = field(w('across', { unit: us ? 'ft' : 'm' }), textInput('add-across', { inputmode: 'decimal' }), w('across-hint'));
  const shoots = field(w('shoots', { unit: us ? 'in' : 'cm' }), textInput('add-shoots', { inputmode: 'decimal' }), w('shoots-hint'));
  const trunk = field(w('trunk', { unit: us ? 'in' : 'cm' }), textInput('add-trunk', { inputmode: 'decimal' }), w('trunk-hint'));
  const tub = field(w('tub'), textInput('add-tub', { inputmode: 'decimal' }), w('tub-hint'));
  const many = field(w('many'), textInput('add-many', { inputmode: 'numeric', value: '1' }), w('many-hint'));
  const mulch = tick('add-mulch', w('mulch'));
  const lawn = tick('add-lawn', w('fed-lawn'));
  const zone = el('div', {});
  const zoneChoice = (): string => zone.querySelector('select')?.value ?? '';
  const wrong = el('div', { id: 'add-wrong', class: 'wrong', role: 'alert' });
  const said = el('p', { id: 'add-said', role: 'status' });
  let last: { word: string; facts: string } | null = null;

  const factsNow = (): string => {
    const year = Number(ctx.today().slice(0, 4)) - 1;
    const n = many.input.value.trim();
    return [
      `${n === '' || n === '1' ? '' : `${n} `}${crop.input.value}`, size.input.value,
      planted.input.value.trim() && `planted ${planted.input.value.trim()}`,
      across.input.value.trim() && `${withUnit(across.input.value, us ? 'ft' : 'm')} across`,
      trunk.input.value.trim() && `trunk ${withUnit(trunk.input.value, us ? 'in' : 'cm')} round`,
      shoots.input.value.trim() && `shoots ${withUnit(shoots.input.value, us ? 'in' : 'cm')} ${year}`,
      tub.input.value.trim() && `tub ${withUnit(tub.input.value, us ? 'gal' : 'L')}`,
      mulch.input.checked ? 'mulch' : '', lawn.input.checked ? 'fed lawn' : '', zoneChoice(),
    ].filter(Boolean).join(', ');
  };
  const add = (named: string, facts: string): boolean => {
    const mistakes = ctx.edit((text) => withTree(text, named, facts));
    fill(wrong, ...mistakes.map((m) => el('p', {}, m)));
    said.textContent = mistakes.length > 0 ? '' : w('added', { name: named });
    return mistakes.length === 0;
  };
  const submit = (): void => {
    if (crop.input.value === '') {
      fill(wrong, el('p', {}, w('what-first')));
      crop.input.focus();
      return;
    }
    const facts = factsNow();
    const wanted = name.input.value.trim();
    const word = capital(crop.input.value);
    // A name that is taken is told; one that nobody chose gives way.
    const named = wanted === '' ? freeName(ctx.state().orchard, word) : wanted;
    if (wanted !== '' && treeLines(ctx.state().orchard).some((t) => t.name.toLowerCase() === wanted.toLowerCase())) {
      fill(wrong, el('p', {}, w('name-taken', { name: wanted })));
      name.input.focus();
      return;
    }
    if (!add(named, facts)) return;
    last = { word, facts };
    form.reset();
    again.hidden = false;
    name.input.focus();
  };
  const again = button(w('same-again'), () => { if (last) add(freeName(ctx.state().orchard, last.word), last.facts); }, { id: 'add-again', hidden: true });
  const form = el('form', { id: 'add', novalidate: true, 'aria-label': w('add-tree') },
    el('h3', {}, w('add-tree')), name.root, crop.root,
    el('div', { class: 'pair' }, size.root, planted.root), el('div', { class: 'pair' }, across.root, trunk.root), el('div', { class: 'pair' }, shoots.root, many.root), tub.root,
    el('div', { class: 'row' }, mulch.root, lawn.root), zone, wrong,
    el('p', { class: 'row' }, el('button', { type: 'submit', class: 'main', id: 'add-tree' }, w('add')), again), said);
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    submit();
  });

  let drawn = '';
  const refresh = (): void => {
    const zones = ctx.early().orchard?.zones.map((z) => z.name) ?? [];
    if (zones.join('\n') === drawn) return;
    drawn = zones.join('\n');
    fill(zone, zones.length > 1 ? field(w('zone'), choose('add-zone', [['', w('not-told')], ...zones.map((z) => [z, z] as const)])).root : null);
  };
  return { root: form, refresh };
}
