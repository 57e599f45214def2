/** What a form is to be given. */
interface FormPart extends Element {
  readonly name: string;
  readonly value: string;
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
    this.#form?.removeEventListener('formdata', this.#give);
    this.#form = form;
    form?.addEventListener('formdata', this.#give);
  }

  readonly #give = (event: FormDataEvent): void => {
    if (this.#part.name !== '' && !this.#part.matches(':disabled')) event.formData.append(this.#part.name, this.#part.value);
  };
}
