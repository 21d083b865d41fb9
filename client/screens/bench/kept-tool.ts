import type { KeyValueStorage } from '../../outbox/browser-storage.ts';
import { TOOLS, type Tool } from './bench-model.ts';

const KEY = 'arakabe.tool';

/** The tool stays in the hand from photo to photo, as long as the window lives. */
export function keepTool(storage: KeyValueStorage | null, tool: Tool): void {
  // A region is split once; then one goes on drawing.
  if (tool === 'split') return;
  try {
    storage?.setItem(KEY, tool);
  } catch {
    return;
  }
}

export function readTool(storage: KeyValueStorage | null): Tool {
  return TOOLS.find((tool) => tool === storage?.getItem(KEY)) ?? 'look';
}
