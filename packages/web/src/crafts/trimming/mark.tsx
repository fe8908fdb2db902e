/** Trimming: a forked stem, and a slanted stroke just above the joint. */
export function TrimmingMark() {
  return (
    <svg width="24" height="24" viewBox="0 0 24 24" aria-hidden="true">
      <path
        d="M12 21V13M12 13 6 5M12 13 18 5M13 11 19 12"
        fill="none"
        stroke="currentColor"
        strokeWidth="2"
        strokeLinecap="round"
        strokeLinejoin="round"
      />
    </svg>
  );
}
