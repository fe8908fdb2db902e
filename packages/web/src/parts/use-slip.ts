import { useCallback, useMemo, useState } from "react";

export interface SlipState {
  readonly isOpen: boolean;
  readonly open: () => void;
  readonly close: () => void;
}

/** Whether a slip stands over the page. */
export function useSlip(): SlipState {
  const [isOpen, setOpen] = useState(false);
  const open = useCallback(() => setOpen(true), []);
  const close = useCallback(() => setOpen(false), []);
  return useMemo(() => ({ isOpen, open, close }), [isOpen, open, close]);
}
