/** An element of the page that holds a schedule in its own shadow root. */
class PanelCard extends HTMLElement {
  constructor() {
    super();
    const schedule = document.createElement('elv-load-schedule');
    schedule.src = 'schedules/greenhouse.schedule.json';
    schedule.licenseKey = 'non-commercial-and-evaluation';
    this.attachShadow({ mode: 'open' }).append(schedule);
  }
}

customElements.define('panel-card', PanelCard);

const tabs = [...document.querySelectorAll('[role=tab]')];
for (const tab of tabs) {
  tab.addEventListener('click', () => {
    for (const each of tabs) {
      each.setAttribute('aria-selected', String(each === tab));
      document.getElementById(each.getAttribute('aria-controls')!)!.hidden = each !== tab;
    }
  });
}

const dialog = document.querySelector('dialog')!;
document.querySelector('#open-dialog')!.addEventListener('click', () => { dialog.showModal(); });
