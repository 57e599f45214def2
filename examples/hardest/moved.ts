const [one, other] = [document.querySelector('#one')!, document.querySelector('#other')!];
const element = document.querySelector('elv-load-schedule')!;
const elsewhere = () => one.contains(element) ? other : one;

const WAYS: Readonly<Record<string, () => void>> = {
  append: () => { elsewhere().append(element); },
  moveBefore: () => { elsewhere().moveBefore(element, null); },
  replaceWith: () => {
    const place = document.createElement('span');
    elsewhere().append(place);
    place.replaceWith(element);
  },
  away: () => {
    const place = element.parentElement!;
    element.remove();
    setTimeout(() => { place.append(element); }, 100);
  },
  cloneNode: () => { elsewhere().append(element.cloneNode(true)); },
};

for (const [name, move] of Object.entries(WAYS)) document.getElementById(name)!.addEventListener('click', move);

export {};
