import { afterAll, beforeAll, expect } from 'vitest';

const MEDIA = ['(forced-colors: active)', '(prefers-color-scheme: dark)', '(prefers-reduced-motion: reduce)', 'print'];

const attributesOf = ({ attributes }: Element) =>
  [...attributes].filter(({ value }) => value !== '').map(({ name, value }) => `${name}: ${value}`).sort();

/** What a file could leave to the next one on the same page. */
const left = () => ({
  address: location.href,
  html: attributesOf(document.documentElement),
  body: attributesOf(document.body),
  inBody: [...document.body.children].map(({ outerHTML }) => outerHTML.slice(0, 200)),
  meta: [...document.querySelectorAll('meta')].map(({ outerHTML }) => outerHTML),
  sheets: document.adoptedStyleSheets.length,
  stored: [...Object.entries(localStorage), ...Object.entries(sessionStorage)],
  media: MEDIA.filter((query) => matchMedia(query).matches),
  viewport: [innerWidth, innerHeight],
  language: navigator.language,
});

let before: ReturnType<typeof left>;

beforeAll(() => { before = left(); });
// It runs behind those of the file, which are named later.
afterAll(() => { expect(left()).toEqual(before); });
