export {
  readProfile, type ProfileCase, type ProfileFactor, type ProfileOptions, type ProfileUnit, type ReadProfile,
} from './read-profile.ts';
