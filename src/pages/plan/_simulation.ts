import { addSums } from '../../analysis/planning/add-sums.ts';
import type { PlanDesign } from '../../analysis/planning/plan-design.ts';
import type { Simulation } from '../../analysis/planning/simulate-plan.ts';
import type { DonePart, Part } from './_worker.ts';

/** Trials simulated for one answer, the same numbers each time; a part is what one worker does at a go. */
export const TRIALS = 2000;
const PART = 50;

/** What the page hears of a simulation. */
export interface Listener {
  progress(done: number): void;
  done(simulation: Simulation): void;
  /** No worker can be had here. */
  failed(): void;
}

/**
 * Workers on all cores, up to four, started at once so that nothing is loaded later and the page goes on working offline.
 *
 * @returns runs a design, or none; what of an earlier one is still under way is forgotten
 */
export function simulation(listener: Listener): (design: PlanDesign | null) => void {
  let run = 0;
  let design: PlanDesign | null = null;
  let next = 0;
  let sum: Simulation | null = null;

  const idle = new Set<Worker>();
  const feed = () => {
    for (const worker of idle) {
      if (design === null || next >= TRIALS) return;
      const draws = { seed: 'plan', from: next, count: Math.min(PART, TRIALS - next) };
      next += draws.count;
      idle.delete(worker);
      worker.postMessage({ run, design, draws } satisfies Part);
    }
  };
  const heard = (worker: Worker, part: DonePart) => {
    idle.add(worker);
    if (part.run === run) {
      sum = sum === null ? part.simulation : addSums(sum, part.simulation);
      if (sum.trials === TRIALS) listener.done(sum);
      else listener.progress(sum.trials);
    }
    feed();
  };
  let isBroken = false;
  const failed = () => {
    isBroken = true;
    listener.failed();
  };
  for (const worker of startWorkers(heard, failed)) idle.add(worker);

  return (wanted) => {
    run += 1;
    [design, next, sum] = [wanted, 0, null];
    if (wanted === null) return;
    if (isBroken) return listener.failed();
    listener.progress(0);
    feed();
  };
}

function startWorkers(heard: (worker: Worker, part: DonePart) => void, failed: () => void): readonly Worker[] {
  const cores = Math.min(4, Math.max(1, navigator.hardwareConcurrency || 1));
  try {
    return Array.from({ length: cores }, () => {
      const worker = new Worker(new URL('./_worker.ts', import.meta.url), { type: 'module' });
      worker.onmessage = ({ data }: MessageEvent<DonePart>) => heard(worker, data);
      worker.onerror = failed;
      return worker;
    });
  } catch {
    failed();
    return [];
  }
}
