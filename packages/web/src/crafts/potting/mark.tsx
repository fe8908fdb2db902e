/** Potting: a small trapezium inside a larger, one root curl between. */
export function PottingMark() {
  return (
    <svg width="24" height="24" viewBox="0 0 24 24" aria-hidden="true">
      <path
        d="M3 5H21L18 21H6ZM8 5 9.5 14H14.5L16 5M10 17.5Q12 15.5 13.5 17T15 18.5"
        fill="none"
        stroke="currentColor"
        strokeWidth="2"
        strokeLinecap="round"
        strokeLinejoin="round"
      />
    </svg>
  );
}
