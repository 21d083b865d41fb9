import type { Paper } from '../services/ports.ts';
import { writeRelease } from './write-release.ts';

export function createPaper(): Paper {
  return { writeRelease };
}
