/**
 * Peak current of a feed when the largest that starts together starts while the rest runs.
 *
 * `î = I + max(îs, îo)`
 *
 * @param connectedAmps I, steady current of all that hangs on it [A], 0 or more
 * @param suppliesAmps îs, surge of its supplies, which all start at power return [A], 0 or more; see `startSurge`
 * @param outputAmps îo, the largest surge of an output, each of which switches by itself [A], 0 or more
 * @returns î [A]
 *
 * Limits: outputs that one command switches at the same moment count one by one; a controller can set them apart by a
 * tenth of a second.
 *
 * Source: arithmetic; that outputs start one by one is common practice, no source.
 *
 * @example feedInrush(4, 120, 78) // 124
 */
export function feedInrush(connectedAmps: number, suppliesAmps: number, outputAmps: number): number {
  return connectedAmps + Math.max(suppliesAmps, outputAmps);
}
