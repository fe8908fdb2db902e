/** Holds the screen awake while a round is walked, where the browser allows it. Returns the release. */
export function keepAwake(): () => void {
  let lock: WakeLockSentinel | undefined;
  let over = false;
  const ask = async () => {
    if (over || document.visibilityState !== "visible") return;
    try {
      lock = await navigator.wakeLock?.request("screen");
      if (over) await lock?.release();
    } catch {
      // Refused (battery low, page not secure): the round goes on with a screen that sleeps.
    }
  };
  document.addEventListener("visibilitychange", ask);
  void ask();
  return () => {
    over = true;
    document.removeEventListener("visibilitychange", ask);
    void lock?.release();
  };
}
