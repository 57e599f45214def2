import { zoomOf } from './zoom-of.ts';

/** Puts a popover below the button that stands before it, as far as the window has room. */
export function placeBelow(event: Event): void {
  const popover = event.currentTarget as HTMLElement;
  const button = popover.previousElementSibling!;
  const zoom = zoomOf(button);
  const { bottom, right } = button.getBoundingClientRect();
  popover.style.setProperty('top', `${bottom / zoom + 6}px`);
  const end = (document.documentElement.clientWidth - right) / zoom;
  popover.style.setProperty('right', `clamp(8px, ${end}px, 100vi - 8px - min(30rem, 100vi - 16px))`);
}
