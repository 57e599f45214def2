import type { ReactiveController, ReactiveControllerHost } from 'lit';

const DRAG_EVENTS = ['dragenter', 'dragover', 'dragleave', 'drop'] as const;

/** Lets files be dropped on an element; text and links that are dragged go on as usual. */
export class DropTarget implements ReactiveController {
  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #take: (files: readonly File[]) => void;
  readonly #allowed: () => boolean;
  #depth = 0;

  /**
   * @param take called with the files that were dropped.
   * @param allowed whether files may be dropped now.
   */
  constructor(
    host: ReactiveControllerHost & HTMLElement, take: (files: readonly File[]) => void, allowed: () => boolean,
  ) {
    this.#host = host;
    this.#take = take;
    this.#allowed = allowed;
    host.addController(this);
  }

  /** Whether files are held over the element. */
  get active(): boolean {
    return this.#depth > 0;
  }

  hostConnected(): void {
    for (const type of DRAG_EVENTS) this.#host.addEventListener(type, this.#on);
  }

  hostDisconnected(): void {
    for (const type of DRAG_EVENTS) this.#host.removeEventListener(type, this.#on);
    this.#depth = 0;
  }

  readonly #on = (event: DragEvent): void => {
    if (event.dataTransfer?.types.includes('Files') !== true || !this.#allowed()) return;
    event.preventDefault();
    if (event.type === 'dragover') {
      event.dataTransfer.dropEffect = 'copy';
      return;
    }
    // Each part that the pointer passes over enters and leaves: only the outermost count matters.
    if (event.type === 'drop') this.#depth = 0;
    else this.#depth = Math.max(0, this.#depth + (event.type === 'dragenter' ? 1 : -1));
    this.#host.requestUpdate();
    if (event.type === 'drop') this.#take([...event.dataTransfer.files]);
  };
}
