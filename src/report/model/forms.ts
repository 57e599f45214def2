import type { Handover } from '../../schedule/index.ts';
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
  changes: ALL,
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
  measuring: ['full', 'site'],
  commissioning: ALL,
} as const satisfies Readonly<Record<string, readonly Form[]>>;

/** The name of a section of a load table. */
export type SectionName = keyof typeof SECTION_FORMS;

export const SECTION_NAMES = Object.keys(SECTION_FORMS) as readonly SectionName[];

/** What of a load table is made. */
export interface Handed {
  readonly form: Form;
  /** Sections that are left out by choice. */
  readonly without: readonly SectionName[];
  /** Whether runs within their limits are drawn too. */
  readonly allPictures: boolean;
}

/** Whether a form holds a section. */
export const isIn = (form: Form, name: SectionName): boolean => (SECTION_FORMS[name] as readonly Form[]).includes(form);

/** What of the load table a schedule says is handed over, as far as this software knows the names. */
export function handedOver({ form, without = [], allPictures = false }: Handover): Handed {
  return {
    form: FORMS.find((each) => each === form) ?? 'full', allPictures,
    without: SECTION_NAMES.filter((name) => without.includes(name)),
  };
}

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
