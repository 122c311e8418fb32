/** The most work this thread does in one turn of the event loop; what other programs take of the machine is not counted. */
export function longestTurn(): { readonly stop: () => number } {
  const spentMs = () => {
    const { user, system } = process.threadCpuUsage();
    return (user + system) / 1_000;
  };
  let before = spentMs();
  let most = 0;
  const timer = setInterval(() => {
    const now = spentMs();
    most = Math.max(most, now - before);
    before = now;
  }, 1);
  return {
    stop: () => {
      clearInterval(timer);
      return most;
    },
  };
}
