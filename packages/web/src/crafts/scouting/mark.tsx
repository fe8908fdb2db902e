/** Scouting: a leaf with one edge turned over, two dots on the underside. */
export function ScoutingMark() {
  return (
    <svg width="24" height="24" viewBox="0 0 24 24" aria-hidden="true">
      <path
        d="M4 20C5 10 10 5 20 4C20 12 17 18 8 18M20 4C15 7 12 9 10 13C13 13 16 11 20 4M4 20 9 15M12 16.5V16.6M15 14.5V14.6"
        fill="none"
        stroke="currentColor"
        strokeWidth="2"
        strokeLinecap="round"
        strokeLinejoin="round"
      />
    </svg>
  );
}
