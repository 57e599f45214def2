import { html, type TemplateResult } from 'lit';

/** A field for a share, which a person enters in percent; what is none from 0 to 1000 is not taken. */
export function percentField(
  name: string, share: number, title: string, change: (share: number) => void,
): TemplateResult {
  const shown = String(Math.round(share * 1e4) / 100);
  const onChange = ({ currentTarget }: Event) => {
    const field = currentTarget as HTMLInputElement;
    if (field.value !== '' && field.checkValidity()) change(Number(field.value) / 100);
    else field.value = shown;
  };
  return html`<label>${title} <input class="percent" data-option=${name} type="number" min="0" max="1000" step="any"
    .value=${shown} @change=${onChange}></label>`;
}
