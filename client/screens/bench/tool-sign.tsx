/** How each tool looks: a hand's way over the picture. */
const SIGNS = {
  look: 'M12 3v18M3 12h18M12 3l-2.5 3M12 3l2.5 3M12 21l-2.5-3M12 21l2.5-3M3 12l3-2.5M3 12l3 2.5M21 12l-3-2.5M21 12l-3 2.5',
  rectangle: 'M4 6h16v12H4z',
  polygon: 'M5 19L3 8l8-5 10 7-4 10z',
  tap: 'M9 9h6v6H9zM12 2v4M12 18v4M2 12h4M18 12h4',
  split: 'M4 5h16v14H4zM12 2v20',
  undo: 'M9 5L4 10l5 5M4 10h10a5 5 0 0 1 0 10h-3',
  redo: 'M15 5l5 5-5 5M20 10H10a5 5 0 0 0 0 10h3',
  boxInMiddle: 'M3 3h18v18H3zM9 9h6v6H9z',
  in: 'M12 4v16M4 12h16',
  out: 'M4 12h16',
  all: 'M4 9V4h5M15 4h5v5M20 15v5h-5M9 20H4v-5',
  closeOutline: 'M5 19L3 8l8-5 10 7-4 10M5 19l4 .4M13 19.7l4 .3',
  drop: 'M5 5l14 14M19 5L5 19',
  leave: 'M5 5l14 14M19 5L5 19',
} as const;

export type Sign = keyof typeof SIGNS;

export function ToolSign({ sign }: { sign: Sign }) {
  return (
    <svg viewBox="0 0 24 24" aria-hidden="true">
      <path d={SIGNS[sign]} />
    </svg>
  );
}
