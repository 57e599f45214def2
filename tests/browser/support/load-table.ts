import type { LoadScheduleElement } from '../../../components/load-schedule/load-schedule.ts';
import type { Content } from '../../../src/schedule/index.ts';
import { mountElement, part } from '../element-mount.ts';
import { openWork } from '../work-support.ts';

/** Puts an element on the page and opens its load table. */
export async function open(
  content: Content, attributes?: Readonly<Record<string, string>>
): Promise<LoadScheduleElement> {
  const element = await mountElement({ content, attributes });
  await openWork(element, 'loadTable');
  return element;
}

/** The frame in which the load table is seen before it is printed. */
export const frameOf = (element: Element) => part(element, 'elv-load-table iframe') as HTMLIFrameElement;
