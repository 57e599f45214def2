/** What a form is to be given. */
interface FormPart extends Element {
  readonly name: string;
  /** Empty where there is nothing to give. */
  readonly value: string;
  /** Takes over what a person is typing. */
  settle(): void;
}

/**
 * Gives a form the value of an element when its data is gathered. Setting it with every edit would write the whole
 * schedule out each time.
 */
export class FormDataSource {
  readonly #part: FormPart;
  #form: HTMLFormElement | null = null;

  constructor(part: FormPart) {
    this.#part = part;
  }

  /** Serves the form that the element belongs to from now on. */
  follow(form: HTMLFormElement | null): void {
    this.#form?.removeEventListener('submit', this.#settle, true);
    this.#form?.removeEventListener('formdata', this.#give);
    this.#form = form;
    form?.addEventListener('submit', this.#settle, true);
    form?.addEventListener('formdata', this.#give);
  }

  readonly #settle = (): void => { this.#part.settle(); };

  readonly #give = (event: FormDataEvent): void => {
    const { name } = this.#part;
    const value = name === '' || this.#part.matches(':disabled') ? '' : this.#part.value;
    if (value !== '') event.formData.append(name, value);
  };
}
