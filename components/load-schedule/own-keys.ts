import type { CommandName } from '../schedule-toolbar/commands.ts';

/** What a key press asks of the element itself. */
export type KeyAction = CommandName | 'nextSheet' | 'previousSheet' | 'keys' | 'back' | 'forth' | 'findNext' | 'findPrevious';

const WITH_CONTROL: Readonly<Record<string, KeyAction>> = {
  f: 'find', h: 'replace', g: 'goTo', o: 'open', s: 'save', j: 'join', i: 'csvIn', e: 'csvOut', b: 'bill', m: 'measure', '/': 'keys', z: 'undo', y: 'redo',
};

/** A slash is typed with Shift on some keyboards. */
const WITH_CONTROL_AND_SHIFT: Readonly<Record<string, KeyAction>> = { z: 'redo', '/': 'keys', k: 'foldGroups' };

const WITH_ALT: Readonly<Record<string, KeyAction>> = {
  PageDown: 'nextSheet', PageUp: 'previousSheet', ArrowLeft: 'back', ArrowRight: 'forth',
};

/** The action that a key press means; `undefined` when it means none. */
export function keyAction(event: KeyboardEvent): KeyAction | undefined {
  if (event.altKey && !event.ctrlKey && !event.metaKey) {
    return event.shiftKey ? undefined : WITH_ALT[event.key];
  }
  if (!event.ctrlKey && !event.metaKey && !event.altKey) {
    if (event.key === 'F1') return event.shiftKey ? 'firstSteps' : 'help';
    if (event.key === 'F3') return event.shiftKey ? 'findPrevious' : 'findNext';
    if (event.key === 'F9') return event.shiftKey ? 'sizing' : 'shareOut';
    if (event.key === 'F4' && !event.shiftKey) return 'wiring';
    if (event.key === 'F6' && event.shiftKey) return 'variants';
    if (event.key === 'F7') return event.shiftKey ? 'moreColumns' : 'cases';
    if (event.key === 'F8') return event.shiftKey ? 'loadTable' : 'takeoff';
    return undefined;
  }
  if (!event.ctrlKey && !event.metaKey || event.altKey) return undefined;
  const action = WITH_CONTROL[event.key.toLowerCase()];
  if (event.shiftKey) return WITH_CONTROL_AND_SHIFT[event.key.toLowerCase()];
  return action;
}
