/**
 * Direct-current resistance of one kilometre of copper conductor at 20 °C.
 *
 * `R = 1000 ÷ (κ × A)`
 *
 * @param areaMm2 A, cross-section [mm²], above 0
 * @param conductivity κ, conductivity at 20 °C [MS/m], above 0; 58 is that of annealed copper
 * @returns R [Ω/km]; `null` when the cross-section or the conductivity is 0
 *
 * Limits: the geometric cross-section. The maximum resistances of IEC 60228 are 4 to 16 % higher, as they allow for
 * lay and tolerances; where the class of a conductor is known, its table value comes first.
 *
 * Source: international annealed copper standard, 58 MS/m at 20 °C, IEC 60028:1925.
 *
 * @example copperResistance(1) // 17.241379
 */
export function copperResistance(areaMm2: number, conductivity = 58): number | null {
  const siemensMetres = conductivity * areaMm2;
  return siemensMetres === 0 ? null : 1000 / siemensMetres;
}
