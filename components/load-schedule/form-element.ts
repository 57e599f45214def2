import { LitElement, type PropertyDeclarations } from 'lit';
import { ElementStates } from './element-states.ts';
import { FormDataSource } from './form-data.ts';

/** The part that an element plays in a form, as the form controls of a page do. */
export abstract class FormElement extends LitElement {
  static readonly formAssociated = true;
  static override properties: PropertyDeclarations = {
    name: { attribute: false, noAccessor: true }, disabled: { type: Boolean, reflect: true }, barred: { state: true },
  };

  /** Whether nothing may be changed, and a form is given nothing. */
  declare disabled: boolean;
  /** Whether the element, or a part of the form that it stands in, is disabled. */
  declare protected barred: boolean;
  protected readonly internals = this.attachInternals();
  protected readonly states = new ElementStates(this.internals);
  readonly #data = new FormDataSource(this);
  #judgedAt: HTMLElement | undefined;

  constructor() {
    super();
    this.disabled = this.barred = false;
  }

  /** What a form is given under the name; nothing where it is empty. */
  abstract get value(): string;
  abstract set value(text: string);

  /** @ignore Takes over what a person is typing. */
  abstract settle(): void;

  /** Name under which a form is given the value. */
  get name(): string {
    return this.getAttribute('name') ?? '';
  }

  set name(name: string) {
    this.setAttribute('name', name);
  }

  /** Kind of form control: the name of the element. */
  get type(): string {
    return this.localName;
  }

  /** The form that the element belongs to. */
  get form(): HTMLFormElement | null {
    return this.internals.form;
  }

  /** The labels of a page that belong to the element. */
  get labels(): NodeList {
    return this.internals.labels;
  }

  /** What keeps a form from being sent. */
  get validity(): ValidityState {
    return this.internals.validity;
  }

  /** The sentence that a person is told when the form cannot be sent; empty when it can. */
  get validationMessage(): string {
    return this.internals.validationMessage;
  }

  /** Whether the validity counts: not where the element is disabled or read-only. */
  get willValidate(): boolean {
    return this.internals.willValidate;
  }

  /** Whether the form can be sent as far as the element goes; fires `invalid` when it cannot. */
  checkValidity(): boolean {
    return this.internals.checkValidity();
  }

  /** The same, and shows a person what keeps the form from being sent. */
  reportValidity(): boolean {
    return this.internals.reportValidity();
  }

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener('pagehide', this.#onLeave);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('pagehide', this.#onLeave);
  }

  /** @ignore The form that the element belongs to changed. */
  formAssociatedCallback(form: HTMLFormElement | null): void {
    this.#data.follow(form);
  }

  /** @ignore The element, or what it stands in, was disabled or enabled. */
  formDisabledCallback(disabled: boolean): void {
    this.barred = disabled;
  }

  /** @ignore The browser brings back what was in the form when a person left the page. */
  formStateRestoreCallback(state: string | File | FormData | null): void {
    if (typeof state === 'string') this.restore(state);
  }

  /** Shows what was in the form when a person left the page. */
  protected abstract restore(value: string): void;

  /** Whether there is something for the browser to bring back when a person comes back to the page. */
  protected abstract get isWorthRestoring(): boolean;

  /**
   * Says that the form cannot be sent, and why; empty when it can.
   * @param place where a person is shown it; there is none before the element shows anything.
   */
  protected judge(sentence: string, place: HTMLElement | undefined): void {
    if (sentence === this.internals.validationMessage && sentence !== '' && place === this.#judgedAt) return;
    this.#judgedAt = place;
    if (sentence === '') this.internals.setValidity({});
    else this.internals.setValidity({ customError: true }, sentence, place);
    this.states.set('invalid', sentence !== '');
  }

  /**
   * The browser takes what it is to bring back when the page is left: to give it with every edit would write everything
   * out each time.
   */
  readonly #onLeave = (): void => {
    const value = this.form !== null && this.isWorthRestoring ? this.value : '';
    if (value !== '') this.internals.setFormValue(null, value);
  };
}
