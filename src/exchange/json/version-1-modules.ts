/** Names of the modules that rows of outputs of version 1 give, each once, in their order. */
export function moduleNames<Value>(outputs: readonly Readonly<Record<string, Value>>[]): (Value & (string | number))[] {
  const names = new Map<string, Value & (string | number)>();
  for (const { module } of outputs) {
    if (typeof module !== 'string' && typeof module !== 'number') continue;
    const name = String(module).trim();
    if (name !== '' && !names.has(name)) names.set(name, module);
  }
  return [...names.values()];
}
