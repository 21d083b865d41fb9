import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { it } from 'vitest';
import { ROOT } from './project-files.ts';

/** Real pictures with known truth, beside the project and never part of it. */
const SAMPLES = path.join(ROOT, '..', 'shared', 'samples');
export const HAS_SAMPLES = existsSync(SAMPLES);

export function sample(...parts: string[]): string {
  return path.join(SAMPLES, ...parts);
}

/** Pictures of one set, without the lists beside them; none where the folder is absent. */
export function sampleNames(set: string): string[] {
  return HAS_SAMPLES ? readdirSync(sample(set)).filter((name) => !name.endsWith('.json')) : [];
}

export function sampleJson(...parts: string[]): unknown {
  return JSON.parse(readFileSync(sample(...parts), 'utf8'));
}

/** Says plainly that a suite had nothing to run on. */
export function saySoWithoutSamples(): void {
  if (!HAS_SAMPLES) it('needs the samples', ({ skip }) => skip('../shared/samples is not there'));
}
