/** Feeding: a narrow measuring glass, a curved surface, three ticks. */
export function FeedingMark() {
  return (
    <svg width="24" height="24" viewBox="0 0 24 24" aria-hidden="true">
      <path
        d="M8 3V20H16V3M6 3H18M8 11Q12 14 16 11M13 8H16M13 15H16M13 18H16"
        fill="none"
        stroke="currentColor"
        strokeWidth="2"
        strokeLinecap="round"
        strokeLinejoin="round"
      />
    </svg>
  );
}
