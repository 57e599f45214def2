import type { Area } from '../translation.ts';
import { cautions } from './cautions.ts';
import { changes } from './changes.ts';
import { checklist } from './checklist.ts';
import { forms } from './forms.ts';
import { pictures } from './pictures.ts';
import { sections } from './sections.ts';
import { standards } from './standards.ts';

/** What the load table, its pictures and its area on the page say. */
export const report = {
  ...cautions, ...checklist, ...standards, ...sections, ...changes, ...pictures, ...forms,
} satisfies Area;
