// The demo in the language of the page, which its address or a person says: `?lang=de`.
const element = document.querySelector('elv-load-schedule')!;

function speak(language: string): void {
  const demo = `../data/demo${language === 'en' ? '' : `.${language}`}.schedule.json`;
  document.documentElement.lang = language;
  element.setAttribute('demo-src', demo);
  // What somebody did or opened is not taken away.
  if (!element.matches(':defined') || element.schedule.lastAction === undefined) element.setAttribute('src', demo);
}

const asked = new URLSearchParams(location.search).get('lang') ?? 'en';
if (['de', 'fr'].includes(asked)) speak(asked);
element.addEventListener('elv-language', ({ language }) => {
  history.replaceState(null, '', `?lang=${language}`);
  speak(language);
});

export {};
