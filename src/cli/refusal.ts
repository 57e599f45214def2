/** Input that the command cannot use; `lines` say why, each with what to do. */
export class Refusal extends Error {
  readonly lines: readonly string[];

  constructor(lines: readonly string[]) {
    super(lines.join('\n'));
    this.lines = lines;
  }
}
