import type Handsontable from 'handsontable/base';

/** How far [px] a pointer moves before it drags rather than clicks. */
const SLACK = 4;
/** How near [px] to the edge of the rows a pointer has them scroll on. */
const EDGE = 24;

/** What dragging rows asks of the grid. */
export interface DragHost {
  readonly readonly: boolean;
  /** Puts the selected rows before a line. */
  dropRows(line: number): void;
}

/**
 * Lets rows that are selected by their headings be dragged to another place. The library's own dragging moves rows of
 * its data, which this grid has none of.
 * @returns a function that takes the listener away.
 */
export function dragRows(hot: Handsontable, box: HTMLElement, layer: HTMLElement, host: DragHost): () => void {
  const ended = new AbortController();
  // Before the library hears of it, which would begin another selection.
  box.addEventListener('mousedown', (event) => {
    const [pressed] = event.composedPath();
    const heading = pressed instanceof Element ? pressed.closest<HTMLTableCellElement>('tbody th') : null;
    const row = heading === null ? -1 : hot.getCoords(heading)?.row ?? -1;
    const ranges = hot.getSelectedRange() ?? [];
    const isSelected = hot.selection.isSelectedByRowHeader()
      && ranges.some(({ from, to }) => row >= Math.min(from.row!, to.row!) && row <= Math.max(from.row!, to.row!));
    if (
      row < 0 || !isSelected || host.readonly || event.button !== 0 || event.shiftKey || event.ctrlKey || event.metaKey
    ) return;
    event.stopImmediatePropagation();
    event.preventDefault();
    follow(event, row);
  }, { capture: true, signal: ended.signal });

  function follow(start: MouseEvent, row: number): void {
    const holder = hot.rootElement.querySelector<HTMLElement>('.ht_master .wtHolder')!;
    const height = hot.stylesHandler.getDefaultRowHeight() ?? 0;
    const mark = document.createElement('div');
    mark.className = 'drop-line';
    const over = new AbortController();
    let [line, y] = [-1, start.clientY];
    const place = (): void => {
      const frame = box.getBoundingClientRect();
      const top = hot.rootElement.querySelector<HTMLElement>('.ht_clone_top thead')?.getBoundingClientRect().bottom ?? frame.top;
      if (y < top + EDGE) holder.scrollTop -= height / 4;
      else if (y > frame.bottom - EDGE) holder.scrollTop += height / 4;
      line = Math.min(hot.countRows(), Math.max(0, Math.round((y - top + holder.scrollTop) / height)));
      mark.style.insetBlockStart = `${top - frame.top + line * height - holder.scrollTop}px`;
    };
    const end = (): void => {
      over.abort();
      cancelAnimationFrame(frame);
      mark.remove();
    };
    let frame = 0;
    const again = (): void => {
      place();
      frame = requestAnimationFrame(again);
    };
    const options = { capture: true, signal: over.signal };
    document.addEventListener('mousemove', (event) => {
      y = event.clientY;
      if (frame !== 0 || Math.abs(y - start.clientY) < SLACK) return;
      layer.append(mark);
      again();
    }, options);
    document.addEventListener('keydown', (event) => {
      if (event.key !== 'Escape') return;
      event.stopPropagation();
      end();
    }, options);
    document.addEventListener('mouseup', () => {
      const isClick = frame === 0;
      end();
      if (isClick) hot.selectRows(row);
      else host.dropRows(line);
    }, options);
    // The pointer was taken away, as by a gesture of the system: nothing is dropped.
    document.addEventListener('pointercancel', end, options);
    ended.signal.addEventListener('abort', end, { signal: over.signal });
  }

  return () => { ended.abort(); };
}
