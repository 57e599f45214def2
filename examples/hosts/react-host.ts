import { createElement, useState, type ReactElement } from 'react';
import { createRoot } from 'react-dom/client';
import type { ElvChangeEvent } from '../../components/load-schedule/events.ts';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { COLUMNS, projectOf, START, withProject } from './start.ts';

const h = createElement;

function Host(): ReactElement {
  const [value, setValue] = useState(START);
  const [readonly, setReadonly] = useState(false);
  const [shown, setShown] = useState(true);
  const [last, setLast] = useState('nothing yet');

  const changed = (event: ElvChangeEvent) => {
    setValue((event.currentTarget as LoadScheduleElement).value);
    setLast(event.label);
  };
  const typed = (
    { currentTarget }: { currentTarget: HTMLInputElement }
  ) => { setValue(withProject(value, currentTarget.value)); };

  return h('div', null,
    h('div', { className: 'row' },
      h('label', null, 'Project ', h('input', { id: 'project', size: 40, value: projectOf(value), onChange: typed })),
      h(
        'label', null,
        h(
          'input', { type: 'checkbox', id: 'readonly', checked: readonly, onChange: () => { setReadonly(!readonly); } }
        ),
        ' Only look'
      ),
      h(
        'label', null,
        h('input', { type: 'checkbox', id: 'shown', checked: shown, onChange: () => { setShown(!shown); } }),
        ' On the page'
      )),
    h('p', null, 'Last action: ', h('output', { id: 'last' }, last)),
    shown && h('elv-load-schedule', {
      'license-key': 'non-commercial-and-evaluation', value, readonly, takeoffColumns: COLUMNS, 'onelv-change': changed,
    },
      h('button', { type: 'button', slot: 'tools', id: 'again', onClick: () => { setValue(START); } }, 'Start again')));
}

createRoot(document.querySelector('#host')!).render(h(Host, null));
