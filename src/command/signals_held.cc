// In: the signals of a user who wants a run to stop. Out: the same, once files are in their place or away.

#include "command/signals_held.h"

#include <array>

namespace benchleaf::command {
namespace {

constexpr std::array kStopping = {SIGINT, SIGTERM, SIGHUP, SIGQUIT};

}  // namespace

SignalsHeld::SignalsHeld() {
  sigemptyset(&held_);
  for (const int signal : kStopping) {
    struct sigaction action = {};
    // one that the user had ignored (nohup) would be pending for ever
    if (sigaction(signal, nullptr, &action) == 0 && action.sa_handler != SIG_IGN) sigaddset(&held_, signal);
  }
  pthread_sigmask(SIG_BLOCK, &held_, &before_);
}

SignalsHeld::~SignalsHeld() { pthread_sigmask(SIG_SETMASK, &before_, nullptr); }

bool SignalsHeld::is_one_waiting() const {
  sigset_t waiting;
  sigpending(&waiting);
  for (const int signal : kStopping) {
    if (sigismember(&held_, signal) == 1 && sigismember(&waiting, signal) == 1) return true;
  }
  return false;
}

}  // namespace benchleaf::command
