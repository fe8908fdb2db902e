/** Whether this browser promised not to throw the book away when space runs short. */
export async function isKeptForGood(): Promise<boolean> {
  return (await navigator.storage?.persisted?.()) ?? false;
}

export async function askToKeep(): Promise<boolean> {
  return (await navigator.storage?.persist?.()) ?? false;
}
