#pragma once
#include <sys/wait.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <csignal>
#include <functional>

namespace gritwright::tests {

/// Another program, begun before this one opens anything: SQLite's handles must not be carried over a fork.
class OtherProgram {
 public:
  explicit OtherProgram(const std::function<int()>& work) {
    REQUIRE(::pipe(start_) == 0);
    child_ = ::fork();
    REQUIRE(child_ >= 0);
    if (child_ != 0) return;
    char sign = 0;
    ::_exit(::read(start_[0], &sign, 1) == 1 ? work() : 99);
  }
  ~OtherProgram() {
    if (child_ > 0) ::kill(child_, SIGKILL);
    finish();
    ::close(start_[0]);
    ::close(start_[1]);
  }
  OtherProgram(const OtherProgram&) = delete;
  OtherProgram& operator=(const OtherProgram&) = delete;
  void start() const { REQUIRE(::write(start_[1], "!", 1) == 1); }
  void kill() {
    ::kill(child_, SIGKILL);
    finish();
  }
  /// Its answer.
  int finish() {
    if (child_ <= 0) return -1;
    int status = 0;
    ::waitpid(child_, &status, 0);
    child_ = 0;
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
  }

 private:
  int start_[2]{};
  pid_t child_ = 0;
};

}  // namespace gritwright::tests
