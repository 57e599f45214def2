/** An element whose shadow root holds a dialog. */
class InnerDialog extends HTMLElement {
  readonly dialog = document.createElement('dialog');

  constructor() {
    super();
    const schedule = document.createElement('elv-load-schedule');
    schedule.setAttribute('src', '../schedules/greenhouse.schedule.json');
    schedule.setAttribute('license-key', 'non-commercial-and-evaluation');
    schedule.style.blockSize = '80vb';
    this.dialog.style.inlineSize = '90vi';
    this.dialog.setAttribute('aria-label', 'Schedule');
    this.dialog.append(schedule);
    this.attachShadow({ mode: 'open' }).append(this.dialog);
  }
}

/** An element whose shadow root holds the other one. */
class OuterFrame extends HTMLElement {
  constructor() {
    super();
    this.attachShadow({ mode: 'open' }).append(document.createElement('inner-dialog'));
  }
}

customElements.define('inner-dialog', InnerDialog);
customElements.define('outer-frame', OuterFrame);

document.querySelector('#open')!.addEventListener('click', () => {
  document.querySelector('outer-frame')!.shadowRoot!.querySelector<InnerDialog>('inner-dialog')!.dialog.showModal();
});
