/** Hatchings of a sheet, as wide on the screen however near one looks: the farther the stage, the more ink. */
const HATCHES = {
  cut: [9, 1, 1],
  raised: [5.5, 1.2, 1],
  pegged: [3.6, 1.4, 1],
  'lath-on': [4, 1.4, 2],
} as const;

export function InkPatterns({ id, unit }: { id: string; unit: number }) {
  return (
    <defs>
      {Object.entries(HATCHES).map(([stage, [gap, stroke, ways]]) => (
        <pattern
          key={stage}
          id={`${id}-${stage}`}
          patternUnits="userSpaceOnUse"
          width={gap}
          height={gap}
          patternTransform={`scale(${unit}) rotate(45)`}
        >
          <path
            className="frame-hatch"
            strokeWidth={stroke}
            d={ways === 2 ? `M0 0V${gap}M0 0H${gap}` : `M${gap / 2} 0V${gap}`}
          />
        </pattern>
      ))}
      <pattern
        id={`${id}-plaster`}
        patternUnits="userSpaceOnUse"
        width="26"
        height="14"
        patternTransform={`scale(${unit})`}
      >
        {/* Strokes of a trowel. */}
        <path className="frame-trowel" d="M2 5q6-3 11 0M15 12q5-3 10 0" />
      </pattern>
    </defs>
  );
}
