/** Growth: a shoot of three nodes, the lower leaves grown, the tip just opening. */
export function GrowthMark() {
  return (
    <svg width="24" height="24" viewBox="0 0 24 24" aria-hidden="true">
      <path
        d="M12 22V6M12 18C8 18 5 16 4 12c4 0 7 2 8 6M12 14c4 0 7-2 8-6-4 0-7 2-8 6M12 6c-2-1-2-3 0-4 2 1 2 3 0 4"
        fill="none"
        stroke="currentColor"
        strokeWidth="2"
        strokeLinecap="round"
        strokeLinejoin="round"
      />
    </svg>
  );
}
