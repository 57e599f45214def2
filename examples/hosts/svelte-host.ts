import { mount } from 'svelte';
import Host from './schedule-host.svelte';

mount(Host, { target: document.querySelector('#host')! });
