import { userEvent } from 'vitest/browser';

/** Puts a text on the clipboard as a person does: by selecting it in a field and copying. */
export async function putOnClipboard(text: string): Promise<void> {
  const field = document.createElement('textarea');
  field.value = text;
  document.body.append(field);
  field.focus();
  field.select();
  await userEvent.keyboard('{Control>}c{/Control}');
  field.remove();
}

/** The text on the clipboard, read as a person does: by pasting it in a field. */
export async function takeFromClipboard(): Promise<string> {
  const field = document.createElement('textarea');
  document.body.append(field);
  field.focus();
  await userEvent.keyboard('{Control>}v{/Control}');
  const text = field.value;
  field.remove();
  return text;
}

export const paste = (): Promise<void> => userEvent.keyboard('{Control>}v{/Control}');
