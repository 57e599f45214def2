/** Today, or the day of another time, by the clock of the person, YYYY-MM-DD. */
export function today(now = new Date()): string {
  const two = (number: number) => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
