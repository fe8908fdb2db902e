/** Fruiting: a star of five petals above a hanging pod. */
export function FruitingMark() {
  return (
    <svg width="24" height="24" viewBox="0 0 24 24" aria-hidden="true">
      <path
        d="M12 6V2M12 6 8 4.5M12 6l4-1.5M12 6 9.5 9.5M12 6l2.5 3.5M12 12c-2 2-3 5-1 10 4-3 4-8 1-10M12 6v6"
        fill="none"
        stroke="currentColor"
        strokeWidth="2"
        strokeLinecap="round"
        strokeLinejoin="round"
      />
    </svg>
  );
}
