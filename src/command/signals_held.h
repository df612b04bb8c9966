#pragma once

#include <signal.h>

namespace benchleaf::command {

/// Holds back the signals that stop a run, from its making to its end; then they take effect.
class SignalsHeld {
 public:
  SignalsHeld();
  ~SignalsHeld();
  SignalsHeld(const SignalsHeld&) = delete;
  SignalsHeld& operator=(const SignalsHeld&) = delete;
  bool is_one_waiting() const;

 private:
  sigset_t held_;
  sigset_t before_;
};

}  // namespace benchleaf::command
