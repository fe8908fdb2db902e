/** Watering: a pot in section, its level two thirds up, three short strokes over it. */
export function WateringMark() {
  return (
    <svg width="24" height="24" viewBox="0 0 24 24" aria-hidden="true">
      <path
        d="M5 9 7 21h10l2-12M6.2 13.5h11.6M8 6V3M12 6V2M16 6V3"
        fill="none"
        stroke="currentColor"
        strokeWidth="2"
        strokeLinecap="round"
        strokeLinejoin="round"
      />
    </svg>
  );
}
