/** The parts of clipper2-ts 2.0.1 the checks of layouts use: areas common to closed paths. */
declare module 'clipper2-ts' {
  export interface PointD {
    x: number
    y: number
  }
  export enum FillRule {
    EvenOdd = 0,
    NonZero = 1,
  }
  /** @param precision decimal places kept, at most 8 */
  export function intersectD(
    subject: PointD[][],
    clip: PointD[][],
    fillRule: FillRule,
    precision?: number,
  ): PointD[][]
  export function areaPathsD(paths: PointD[][]): number
}
