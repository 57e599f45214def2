/**
 * Begins to measure the processor time of this process. What a test beside it takes counts too, so a limit is to be
 * several times what is needed; a busy machine adds nothing to it, as it does to a clock.
 *
 * @returns what tells the time since [ms]
 */
export function processorTime(): () => number {
  const before = process.cpuUsage();
  return () => {
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1000;
  };
}
