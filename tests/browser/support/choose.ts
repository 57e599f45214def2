import { userEvent } from 'vitest/browser';
import { part } from '../element-mount.ts';

/** Chooses in a list of the toolbar, as a person does. */
export async function choose(element: Element, name: 'groupings' | 'rows', value: string): Promise<void> {
  await userEvent.selectOptions(part(element, `[data-choice=${name}]`)!, value);
}
