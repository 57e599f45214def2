import { css, html, LitElement, type TemplateResult } from 'lit';
import { isWellFormed, LANGUAGES, languageOf, type Words } from '../../src/words/index.ts';
import { controls } from '../look/index.ts';

/** Chooses the language, where the page offers several. */
export class LanguageChoice extends LitElement {
  static override styles = [controls, css`
    select {
      min-block-size: 28px;
      max-inline-size: 9em;
      border: 1px solid var(--elv-line);
      border-radius: var(--elv-radius);
      background: var(--elv-surface-raised);
      color: var(--elv-ink);
    }
  `];

  static override properties = {
    tags: { attribute: false }, words: { attribute: false }, choose: { attribute: false },
  };

  /** Language tags with spaces between, as the page gives them. */
  declare tags: string;
  declare words: Words;
  declare choose: (tag: string) => void;

  override render(): TemplateResult {
    const { words } = this;
    const tags = this.tags.split(/\s+/).filter((tag) => isWellFormed(tag) && isSpoken(tag));
    const chosen = tags.find((tag) => tag === words.locale) ?? tags.find((tag) => languageOf(tag) === words.language);
    const title = words.say('Language');
    return html`<select aria-label=${title} title=${title}
      @change=${({ currentTarget }: Event) => { this.choose((currentTarget as HTMLSelectElement).value); }}>
      ${tags.map((tag) => html`<option value=${tag} lang=${tag} .selected=${tag === chosen}>${ownName(tag)}</option>`)}</select>`;
  }
}

/** Whether the software has words of its own in the language of a tag. */
function isSpoken(tag: string): boolean {
  const { language } = new Intl.Locale(tag);
  return LANGUAGES.some((each) => each === language);
}

/** What a language calls itself. */
function ownName(tag: string): string {
  const name = new Intl.DisplayNames([tag], { type: 'language' }).of(tag) ?? tag;
  return name.charAt(0).toLocaleUpperCase(tag) + name.slice(1);
}
