import greenhouse from '../schedules/greenhouse.schedule.json';

const KEY = 'license-key="non-commercial-and-evaluation"';
const SOURCE = 'src="../schedules/greenhouse.schedule.json"';
const others = document.querySelector('#others')!;

/** Makes a place for an element, which then has a name to be found by. */
function put(...nodes: Node[]): void {
  others.append(...nodes);
}

// Before the element is defined: a property is set on what is no more than a tag yet.
const early = document.createElement('elv-load-schedule');
early.id = 'early';
Object.assign(
  early, { value: JSON.stringify(greenhouse), licenseKey: 'non-commercial-and-evaluation', readonly: true }
);
put(early);

const script = document.querySelector<HTMLScriptElement>('script[src*="births"]')!;
const define = new URL('../../elv-load-schedule.js', script.src);
await import(/* @vite-ignore */ define.href);
await customElements.whenDefined('elv-load-schedule');

const text = document.createElement('div');
text.innerHTML = `<elv-load-schedule id="as-text" ${SOURCE} ${KEY}></elv-load-schedule>`;
put(text);

put(document.querySelector('template')!.content.cloneNode(true));

const clone = document.querySelector('#in-page')!.cloneNode(true) as HTMLElement;
clone.id = 'clone';
put(clone);

const parsed =
  new DOMParser().parseFromString(`<elv-load-schedule id="parsed" ${SOURCE} ${KEY}></elv-load-schedule>`, 'text/html');
put(document.importNode(parsed.querySelector('elv-load-schedule')!, true));

const frame = document.createElement('iframe');
frame.title = 'Written';
put(frame);
frame.contentDocument!.open();
// It is old, and pages still do it.
// eslint-disable-next-line @typescript-eslint/no-deprecated
frame.contentDocument!.write(`<!doctype html><base href="${location.href}"><script type="module" src="${define.href}"></script>
  <elv-load-schedule id="written" ${SOURCE} ${KEY}></elv-load-schedule>`);
frame.contentDocument!.close();

// Under another address it is another module, which finds its names taken.
await import(/* @vite-ignore */ `${define.href}?again`);
