import { createApp, defineComponent, h, ref } from 'vue';
import type { ElvChangeEvent } from '../../components/load-schedule/events.ts';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import { COLUMNS, projectOf, START, withProject } from './start.ts';

const Host = defineComponent(() => {
  const value = ref(START);
  const readonly = ref(false);
  const shown = ref(true);
  const last = ref('nothing yet');

  const changed = (event: ElvChangeEvent) => {
    value.value = (event.currentTarget as LoadScheduleElement).value;
    last.value = event.label;
  };
  const typed = ({ currentTarget }: Event) => {
    value.value = withProject(value.value, (currentTarget as HTMLInputElement).value);
  };

  return () => h('div', [
    h('div', { class: 'row' }, [
      h('label', ['Project ', h('input', { id: 'project', size: 40, value: projectOf(value.value), onInput: typed })]),
      h(
        'label',
        [
          h(
            'input',
            {
              type: 'checkbox', id: 'readonly', checked: readonly.value,
              onChange: () => { readonly.value = !readonly.value; },
            }
          ),
          ' Only look',
        ]
      ),
      h(
        'label',
        [
          h(
            'input',
            { type: 'checkbox', id: 'shown', checked: shown.value, onChange: () => { shown.value = !shown.value; } }
          ),
          ' On the page',
        ]
      ),
    ]),
    h('p', ['Last action: ', h('output', { id: 'last' }, last.value)]),
    shown.value ? h('elv-load-schedule', {
      'license-key': 'non-commercial-and-evaluation', value: value.value, readonly: readonly.value,
      takeoffColumns: COLUMNS, 'onElv-change': changed,
    }, [h(
      'button', { type: 'button', slot: 'tools', id: 'again', onClick: () => { value.value = START; } }, 'Start again'
    )]) : null,
  ]);
});

createApp(Host).mount('#host');
