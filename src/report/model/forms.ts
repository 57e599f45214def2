import { message, type Words } from '../../words/index.ts';

/**
 * What a load table is for: `full` has everything; `site` is what the panel is wired, set and tested by; `short` is
 * what is read and signed, a few pages whatever the size.
 */
export const FORMS = ['full', 'short', 'site'] as const;
export type Form = (typeof FORMS)[number];

export const FORM_TITLES = {
  full: message('Full'), short: message('Short'), site: message('For the site'),
} as const satisfies Readonly<Record<Form, unknown>>;

const ALL: readonly Form[] = FORMS;

/** The sections of a load table in their order, with the forms that hold them. */
export const SECTION_FORMS = {
  revisions: ['full', 'short'],
  changes: ['full', 'short'],
  summary: ['full', 'short'],
  panels: ['full', 'short'],
  findings: ALL,
  accepted: ['full', 'short'],
  'one-line': ['full'],
  supplies: ['full', 'short'],
  ways: ALL,
  protections: ['full', 'site'],
  branches: ['full', 'short'],
  'branches-as-cabled': ['full'],
  runs: ['full', 'short'],
  'run-pictures': ['full'],
  modules: ['full', 'site'],
  outputs: ['full', 'short'],
  feeds: ['full', 'short'],
  enclosures: ['full'],
  rails: ['full', 'site'],
  cases: ['full', 'short'],
  wiring: ['full', 'site'],
  inside: ['full', 'site'],
  cables: ['full', 'site'],
  spare: ['full', 'site'],
  'devices-per-rail': ['full'],
  'devices-per-branch': ['full'],
  types: ['full'],
  conductors: ['full'],
  contacts: ['full'],
  notes: ['full'],
  assumptions: ['full'],
  explanations: ['full'],
  'not-judged': ['full', 'short'],
  checklist: ['full', 'site'],
  commissioning: ALL,
} as const satisfies Readonly<Record<string, readonly Form[]>>;

/** The name of a section of a load table. */
export type SectionName = keyof typeof SECTION_FORMS;

export const SECTION_NAMES = Object.keys(SECTION_FORMS) as readonly SectionName[];

/** Whether a form holds a section. */
export const isIn = (form: Form, name: SectionName): boolean => (SECTION_FORMS[name] as readonly Form[]).includes(form);

/** What a form says of what it leaves out. */
export function formCaution(form: Form, words: Words): string[] {
  switch (form) {
    case 'full': return [];
    case 'short': return [words.say(
      'Short form: devices, terminals, cables, types, notes, assumptions and how figures are calculated are not listed here; the full form has them.'
    )];
    case 'site': return [words.say(
      'For the site: what the panel is wired, set and tested by. Loads, runs, devices and how figures are calculated are not listed here; the full form has them.'
    )];
  }
}
