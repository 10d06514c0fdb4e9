/** Elements by hand. Text is always set as text, so nothing that a grower pastes can become markup. */
export type Child = Node | string | null;
type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

/** An element; an attribute that is false or undefined is left out, one that is true stands without a value. */
export function el<K extends keyof HTMLElementTagNameMap>(tag: K, attributes: Attributes = {}, ...children: readonly Child[]): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== undefined && value !== false) element.setAttribute(name, value === true ? '' : String(value));
  }
  element.append(...children.filter((c) => c !== null));
  return element;
}

export function button(text: string, act: () => void, attributes: Attributes = {}): HTMLButtonElement {
  const made = el('button', { type: 'button', ...attributes }, text);
  made.addEventListener('click', act);
  return made;
}

/** Fills an element anew. */
export const fill = (element: Element, ...children: readonly Child[]): void => element.replaceChildren(...children.filter((c) => c !== null));

export const list = (lines: readonly string[], attributes: Attributes = {}): HTMLElement | null => (lines.length === 0 ? null : el('ul', attributes, ...lines.map((l) => el('li', {}, l))));

export type Field<T extends HTMLElement = HTMLInputElement> = { readonly root: HTMLElement; readonly input: T; readonly mistakes: (lines: readonly string[]) => void };

/** A label tied to its field, an example below, and room for what is wrong with it. */
export function field<T extends HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement>(label: string, input: T, hint = ''): Field<T> {
  const said = el('p', { id: `${input.id}-said`, class: 'wrong', role: 'status' });
  const example = hint ? el('p', { id: `${input.id}-hint`, class: 'hint' }, hint) : null;
  input.setAttribute('aria-describedby', `${example ? `${input.id}-hint ` : ''}${said.id}`);
  const mistakes = (lines: readonly string[]): void => {
    said.textContent = lines.join(' ');
    if (lines.length > 0) input.setAttribute('aria-invalid', 'true');
    else input.removeAttribute('aria-invalid');
  };
  return { root: el('div', { class: 'field' }, el('label', { for: input.id }, label), input, example, said), input, mistakes };
}

export const textInput = (id: string, attributes: Attributes = {}): HTMLInputElement => el('input', { id, type: 'text', autocomplete: 'off', autocapitalize: 'off', spellcheck: 'false', ...attributes });

export function choose(id: string, choices: readonly (readonly [value: string, text: string])[]): HTMLSelectElement {
  return el('select', { id }, ...choices.map(([value, text]) => el('option', { value }, text)));
}

export function tick(id: string, label: string): { root: HTMLElement; input: HTMLInputElement } {
  const input = el('input', { id, type: 'checkbox' });
  return { root: el('div', { class: 'tick' }, input, el('label', { for: id }, label)), input };
}

/** Offers a file to be saved. */
export function download(name: string, content: string | Uint8Array, type: string): void {
  const url = URL.createObjectURL(new Blob([content as string | Uint8Array<ArrayBuffer>], { type: typeof content === 'string' ? `${type};charset=utf-8` : type }));
  const link = el('a', { href: url, download: name });
  link.click();
  setTimeout(() => { URL.revokeObjectURL(url); }, 60_000);
}

/** Saves a file or, where the device can, hands it to another program of it. */
export function handOn(name: string, type: string, content: () => string, words: { readonly save: string; readonly share: string }, { id, ...attributes }: Attributes & { readonly id: string }): HTMLElement[] {
  const file = (): File => new File([content()], name, { type });
  // A browser may know the call and still refuse files, or pages that were opened from a file.
  const canShare = typeof navigator.share === 'function' && typeof navigator.canShare === 'function' && navigator.canShare({ files: [new File([''], name, { type })] });
  return [
    button(words.save, () => { download(name, content(), type); }, { id: `save-${id}`, ...attributes }),
    ...(canShare ? [button(words.share, () => { void navigator.share({ files: [file()], title: name }).catch(() => undefined); }, { id: `share-${id}`, ...attributes })] : []),
  ];
}
