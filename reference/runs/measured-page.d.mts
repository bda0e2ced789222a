import type * as Library from '../../lib/index.js';

export interface HeatUp {
  readonly start_C: number;
  readonly end_C: number;
  readonly time_min: number;
  readonly volume_L: number;
  readonly strength_percent: number;
  readonly run: number;
  readonly boils_C: number;
  readonly heat_J: number;
}
export interface Product {
  readonly passes: number;
  readonly charge_L: number;
  readonly charge_strength: number;
  readonly charge_pure_L: number;
  readonly product_L: number;
  readonly product_strength: number;
  readonly product_pure_L: number;
  readonly stages: number;
  readonly reflux: number;
  readonly kept: number;
}
type Lib = typeof Library;
export function rowsOf(name: string): readonly Readonly<Record<string, string | number>>[];
export function heatUps(lib: Lib): readonly HeatUp[];
export function oneHeat(runs: readonly HeatUp[]): { readonly power_W: number; readonly off: readonly number[] };
export function products(lib: Lib): readonly Product[];
export function measuredPage(lib: Lib): string;
