import type { PlanDesign } from '../../analysis/planning/plan-design.ts';
import { simulatePlan, type Draws, type Simulation } from '../../analysis/planning/simulate-plan.ts';

/** A part of a simulation to do; `run` comes back with it. */
export interface Part {
  readonly run: number;
  readonly design: PlanDesign;
  readonly draws: Draws;
}
export interface DonePart {
  readonly run: number;
  readonly simulation: Simulation;
}

// Simulates off the page's own thread, part by part.
onmessage = ({ data: { run, design, draws } }: MessageEvent<Part>) => {
  postMessage({ run, simulation: simulatePlan(design, draws) } satisfies DonePart);
};
